#pragma once
#include <QWidget>
#include <optional>

#include "core/record/next.h"
#include "core/record/shop_floor.h"

class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace cw {

class Course;
class LeadsWord;

/// What a panel is shown with: the job as it stands, and what comes next in it.
struct BenchView {
  const Job& job;
  Next next;
  ShopFloor floor;
  std::string worker;  ///< sign of whoever is at the bench

  const Step& step() const { return job.sheet.steps[next.step]; }
  const Joint* joint() const { return job.sheet.joint(step().joint); }
  /// What the person at the bench holds for the pass under way; nullptr if no wrench is set.
  const ToolSet* inHand() const { return job.steps[next.step].tightening.heldBy(worker); }
};

/// The middle of the bench at one kind of moment. It says what its main action will state, and states it.
class StagePanel : public QWidget {
  Q_OBJECT

 public:
  explicit StagePanel(Course& course);

  /// Shows the moment afresh; what was typed before is gone.
  virtual void present(const BenchView& view) = 0;
  /// The words on the main action: what pressing it states.
  virtual QString mainAction() const = 0;
  /// What comes after, for the same button; may be empty.
  virtual QString afterwards() const { return {}; }
  /// May Space press the main action? It stops where something must be looked at first.
  virtual bool takesSpace() const { return false; }
  virtual bool isReady() const { return true; }
  /// The main action.
  virtual void act() = 0;
  /// Digits typed anywhere on the bench go here; nullptr if none are wanted.
  virtual QLineEdit* digitField() const { return nullptr; }

 signals:
  void changed();  ///< what the main action would state is another

 protected:
  Course& course() const { return m_course; }
  QVBoxLayout* column() const { return m_column; }

  QLabel* addText(const QString& objectName);
  /// A field with its label above; `unit` stands inside it.
  QLineEdit* addField(const QString& label, const QString& objectName, const QString& unit = {});
  QLineEdit* addPin(const QString& label, const QString& objectName);
  LeadsWord* addLeadsWord(const QString& lead, const QString& reason);
  QPushButton* addButton(const QString& text, const QString& objectName);
  static bool isFilled(const QLineEdit* field);
  void addGap();                                ///< between two things that are touched
  void keepInView(QWidget& part);               ///< in a low window
  void setShown(QLineEdit* field, bool shown);  ///< with its label

 private:
  Course& m_course;
  QVBoxLayout* m_column;
};

/// The panel for a stage, or nullptr where nothing is shown (a job that has ended).
StagePanel* makeStagePanel(Stage stage, Course& course);

}  // namespace cw
