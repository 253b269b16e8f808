#pragma once
#include <QWidget>
#include <vector>

#include "core/report/outcome.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace cw {

class FigureDesk;
class WorkingView;

/// What a computation came to: the number large, the same in the other units, the band as a picture,
/// cautions, and the working folded beneath.
class OutcomeView final : public QWidget {
  Q_OBJECT

 public:
  explicit OutcomeView(FigureDesk& desk, QWidget* parent = nullptr);

  void present(const Outcome& outcome);
  void askFor(const QStringList& inputs);
  void refuse(const QString& sentence);

 private:
  void clear();
  void show(const FigureAnswer& answer, bool first);
  void say(const QString& sentence, QPalette::ColorRole ink);
  void add(QWidget* widget, const char* name);

  FigureDesk& m_desk;
  QVBoxLayout* m_answers;
  QWidget* m_body = nullptr;
  WorkingView* m_working;
};

}  // namespace cw
