#pragma once
#include <QWidget>
#include <vector>

#include "core/report/outcome.h"

namespace cw {

class FigureDesk;
class WorkingView;

/// What a computation came to: the number large, the same in the other units, the band as a picture,
/// cautions, a way on to the wrench, and the working folded beneath.
class OutcomeView final : public QWidget {
  Q_OBJECT

 public:
  explicit OutcomeView(FigureDesk& desk, QWidget* parent = nullptr);

  void present(const Outcome& outcome);
  void askFor(const QStringList& inputs);
  void refuse(const QString& sentence);

 private:
  void clear();
  void show(const FigureAnswer& answer, int number);
  void showNumber(const FigureAnswer& answer, bool first);
  void offerToCarry(const CarriedTorque& carried, int number);
  void add(QWidget* widget, const char* name);

  FigureDesk& m_desk;
  QWidget* m_place;
  QWidget* m_answers = nullptr;
  WorkingView* m_working;
};

}  // namespace cw
