#pragma once
#include <QPointer>
#include <QScrollArea>

namespace cw {

/// A column of the bench. In a low window it scrolls, and keeps one part of it in view, whatever stands
/// above, and what has the keyboard.
class BenchColumn final : public QScrollArea {
  Q_OBJECT

 public:
  explicit BenchColumn(QWidget* content, QWidget* parent = nullptr);

  /// As far down as that part needs, never past its beginning; nullptr for the top.
  void keepInView(QWidget* part);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void bringIntoView();
  QPointer<QWidget> m_part;
};

}  // namespace cw
