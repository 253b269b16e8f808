#pragma once
#include <QLayout>
#include <memory>
#include <vector>

namespace cw {

/// Widgets side by side, and on the next line where there is no room: a row of actions at any text scale.
class FlowLayout final : public QLayout {
 public:
  explicit FlowLayout(int gap);
  ~FlowLayout() override;

  void addItem(QLayoutItem* item) override { m_items.emplace_back(item); }
  int count() const override { return static_cast<int>(m_items.size()); }
  QLayoutItem* itemAt(int index) const override;
  QLayoutItem* takeAt(int index) override;

  Qt::Orientations expandingDirections() const override { return {}; }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override { return arrange(QRect(0, 0, width, 0), false); }
  QSize sizeHint() const override { return minimumSize(); }
  QSize minimumSize() const override;
  void setGeometry(const QRect& rect) override;

 private:
  /// Answers with the height; moves the items only if told to.
  int arrange(const QRect& rect, bool move) const;

  int m_gap;
  std::vector<std::unique_ptr<QLayoutItem>> m_items;
};

}  // namespace cw
