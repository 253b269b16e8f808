#pragma once
#include <QKeySequence>
#include <QWidget>
#include <map>

#include "app/common/navigator.h"
#include "app/figures/figure.h"

class QListWidget;
class QStackedWidget;

namespace cw {

class Workspace;

/// Figures: the computations on the left, one of them on the right.
class FiguresPlace final : public QWidget {
  Q_OBJECT

 public:
  FiguresPlace(Workspace& workspace, Navigator& navigator, QWidget* parent = nullptr);
  ~FiguresPlace() override;

  void show(const QString& key);
  QString shown() const;
  FigureDesk& desk() { return m_desk; }

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QWidget* makeList();
  void fitList();
  QWidget* pageOf(const Figure& figure);
  void showRow(int row);
  void makeAnew();
  void addStepKey(const QKeySequence& key, int step);

  FigureDesk m_desk;
  QListWidget* m_list;
  QStackedWidget* m_pages;
  std::map<QString, QWidget*> m_made;
};

QWidget* makeFiguresPlace(Workspace& workspace, Navigator& navigator, QWidget* parent);

}  // namespace cw
