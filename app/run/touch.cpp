#include "app/run/touch.h"

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QStyledItemDelegate>
#include <algorithm>
#include <cmath>

namespace cw {
namespace {

constexpr int kRowMargin = 6, kRowInset = 12, kLabelAbove = 6;
constexpr int kRowFlow = Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap;

class TouchRows final : public QStyledItemDelegate {
 public:
  explicit TouchRows(QAbstractItemView& view) : QStyledItemDelegate(&view), m_view(view) {}

  QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    const int target = static_cast<int>(std::ceil(pixels(bench::kTarget, &m_view)));
    const QFontMetrics metrics(m_view.font());
    const QSize asked = QStyledItemDelegate::sizeHint(option, index);
    const auto* list = qobject_cast<const QListView*>(&m_view);
    if (list == nullptr || !list->wordWrap()) return {asked.width(), std::max(asked.height(), target)};
    // The delegate itself would guess the height from an unwrapped line.
    const int room = m_view.viewport()->width() - 2 * (list->spacing() + kRowInset);
    const QRect words =
        metrics.boundingRect(QRect(0, 0, std::max(room, 1), 10000), kRowFlow, index.data().toString());
    return {0, std::max(words.height() + 2 * kRowMargin, target)};
  }

  void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
    QStyleOptionViewItem row(option);
    initStyleOption(&row, index);
    m_view.style()->drawPrimitive(QStyle::PE_PanelItemViewItem, &row, painter, &m_view);
    const bool isChosen = row.state.testFlag(QStyle::State_Selected);
    const bool isOffered = index.flags().testFlag(Qt::ItemIsSelectable);
    painter->setFont(row.font);
    painter->setPen(row.palette.color(isChosen    ? QPalette::HighlightedText
                                      : isOffered ? QPalette::Text
                                                  : QPalette::PlaceholderText));
    painter->drawText(row.rect.adjusted(kRowInset, 0, -kRowInset, 0), kRowFlow, row.text);
  }

 private:
  QAbstractItemView& m_view;
};

int targetOf(const QWidget& widget) {
  return static_cast<int>(std::ceil(pixels(bench::kTarget, &widget)));
}

/// As high as a target, and as its lines need at the present size of text.
class TouchChoice final : public QComboBox {
 public:
  explicit TouchChoice(int lines) : m_lines(lines) {}
  QSize sizeHint() const override { return raised(QComboBox::sizeHint()); }
  QSize minimumSizeHint() const override { return raised(QComboBox::minimumSizeHint()); }

 private:
  QSize raised(const QSize& size) const {
    const int words = fontMetrics().lineSpacing() * m_lines + 2 * kRowMargin;
    return size.expandedTo({targetOf(*this), std::max(targetOf(*this), words)});
  }
  int m_lines;
};

}  // namespace

TallList::TallList() {
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Minimum);
}

/// Rows get higher where the list gets narrower.
void TallList::updateGeometries() {
  QListWidget::updateGeometries();
  setMinimumHeight(contentsSize().height() + 2 * frameWidth() + 2 * spacing());
}

void fitForTouch(QWidget& control, double textHeight) {
  control.setFont(fontOfHeight(textHeight, &control));
  control.setMinimumSize(targetOf(control), targetOf(control));
}

QPushButton* touchButton(const QString& text, const QString& objectName) {
  auto* button = new QPushButton(text);
  button->setObjectName(objectName);
  fitForTouch(*button);
  return button;
}

QCheckBox* touchCheck(const QString& text, const QString& objectName) {
  auto* box = new QCheckBox(text);
  box->setObjectName(objectName);
  fitForTouch(*box);
  return box;
}

QLabel* labelFor(QWidget& field, const QString& text) {
  auto* label = new QLabel(text);
  label->setFont(fontOfHeight(bench::kLabelHeight, &field));
  label->setForegroundRole(QPalette::PlaceholderText);
  label->setTextFormat(Qt::PlainText);
  label->setWordWrap(true);
  label->setContentsMargins(0, kLabelAbove, 0, 0);  // nearer to its own field than to the one above
  label->setBuddy(&field);
  field.setAccessibleName(text);
  return label;
}

QComboBox* touchChoice(const QString& objectName, int lines) {
  auto* choice = new TouchChoice(lines);
  choice->setObjectName(objectName);
  choice->setFont(fontOfHeight(bench::kLabelHeight, choice));
  choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  choice->view()->setItemDelegate(new TouchRows(*choice->view()));
  return choice;
}

void fitRowsForTouch(QListWidget& list) {
  list.setWordWrap(true);
  list.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  list.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  list.setResizeMode(QListView::Adjust);
  list.setSpacing(touchGap(list) / 2);
  list.setItemDelegate(new TouchRows(list));
}

int touchGap(const QWidget& of) {
  return static_cast<int>(std::ceil(pixels(bench::kGap, &of)));
}

}  // namespace cw
