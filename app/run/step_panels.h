#pragma once
#include "app/run/stage_panel.h"

class QCheckBox;
class QPushButton;

namespace cw {

/// Warnings and cautions stand above; this states that they were read.
class WarningsPanel final : public StagePanel {
  Q_OBJECT
 public:
  using StagePanel::StagePanel;
  void present(const BenchView& view) override;
  QString mainAction() const override { return tr("I have read this"); }
  void act() override;
};

/// One act; for a single-use part that a new one is fitted, with its batch where wanted.
class ActPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit ActPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  bool takesSpace() const override { return !m_renews; }
  bool isReady() const override;
  void act() override;

 private:
  QLabel* m_part;
  QCheckBox* m_renewed;
  QLineEdit* m_batch;
  bool m_renews = false, m_wantsBatch = false;
};

/// Yes is the main action; no is beside it and leaves the step open.
class CheckPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit CheckPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override { return tr("Yes, it is so"); }
  void act() override { answer(Answer::Yes); }

 private:
  void answer(Answer answer);
  QLineEdit* m_remark;
  QPushButton* m_no;
};

class MeasurePanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit MeasurePanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  bool isReady() const override;
  void act() override;
  QLineEdit* digitField() const override { return m_value; }

 private:
  QLabel* m_limits;
  QLineEdit* m_value;
  QString m_unit;
};

class ApplyPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit ApplyPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override { return tr("Applied"); }
  bool isReady() const override;
  void act() override;

 private:
  QLineEdit *m_batch, *m_expiry;
  bool m_wantsBatch = false;
};

/// The job is paused: who, when and why, and where it goes on.
class ResumePanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit ResumePanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override { return tr("Resume"); }
  bool isReady() const override;
  void act() override;
  QLineEdit* digitField() const override { return m_pin; }

 private:
  QStringList lapsedSince(const BenchView& view) const;
  void printTag();

  QLabel *m_story, *m_lapsed;
  QLineEdit *m_pin, *m_supervisorPin;
  QCheckBox* m_repeat;
  QPushButton* m_tag;
};

class FinishPanel final : public StagePanel {
  Q_OBJECT
 public:
  explicit FinishPanel(Course& course);
  void present(const BenchView& view) override;
  QString mainAction() const override;
  void act() override;

 private:
  QLabel *m_text, *m_unconfirmed;
  QLineEdit* m_remark;
  LeadsWord* m_word;
  bool m_short = false;  ///< something is left undone
};

}  // namespace cw
