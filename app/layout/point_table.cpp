#include "app/layout/point_table.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/fields/input_field.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "core/pattern/numeral_json.h"

namespace cw {
namespace {

enum PointColumn { LabelColumn, XColumn, YColumn };
constexpr int kRowsShown = 8;

Result<Length> coordinate(const std::string& text, const LengthUnit& unit, DecimalMark mark) {
  CW_TRY(digits, parseNumber(text, mark, true));
  return quantity(numberOf(digits), unit);
}

}  // namespace

Result<std::vector<Point>> pointsIn(const std::string& text, const LengthUnit& unit, DecimalMark mark) {
  QString blanks = toQt(text).replace(QLatin1Char(';'), QLatin1Char(' '));
  if (mark == DecimalMark::Point) blanks.replace(QLatin1Char(','), QLatin1Char(' '));
  const QStringList words = blanks.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
  if (words.isEmpty() || words.size() % 2 != 0)
    return fail(ErrorCode::InvalidInput, "points", text, {"“%1” is not x and y", {shown(text)}},
                "write two numbers, such as 40 -25");
  std::vector<Point> out;
  for (qsizetype i = 0; i < words.size(); i += 2) {
    CW_TRY(x, coordinate(fromQt(words[i]), unit, mark));
    CW_TRY(y, coordinate(fromQt(words[i + 1]), unit, mark));
    out.push_back({x, y});
  }
  return out;
}

PointTable::PointTable(QWidget* parent)
    : QWidget(parent), m_table(new QTableWidget), m_found(textLabel({}, deskFont(), QPalette::BrightText)) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  m_typed = new InputField(
      {QStringLiteral("typedPoint"), tr("x to the right and y up; Enter adds"), QStringLiteral("40 -25")});
  connect(m_typed->edit(), &QLineEdit::returnPressed, this, &PointTable::addTyped);
  connect(m_typed, &InputField::edited, this, [this] { m_typed->find({}); });
  m_table->setObjectName(QStringLiteral("pointTable"));
  m_table->setAccessibleName(tr("Positions and their coordinates"));
  m_table->setColumnCount(3);
  m_table->verticalHeader()->hide();
  m_table->setFrameShape(QFrame::NoFrame);
  m_table->setTabKeyNavigation(false);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  m_table->setMinimumHeight(fontMetrics().height() * 2 * kRowsShown);
  m_table->installEventFilter(this);
  m_found->setObjectName(QStringLiteral("pointsFound"));
  m_found->hide();
  down->addWidget(m_typed);
  down->addWidget(m_table);
  down->addWidget(m_found);
  connect(m_table, &QTableWidget::itemChanged, this, &PointTable::change);
}

void PointTable::present(const Layout& layout) {
  const auto* free = std::get_if<FreePoints>(&layout.shape);
  if (free == nullptr) return;
  m_points = free->points;
  m_unit = layout.unit;
  m_found->hide();
  const QSignalBlocker quiet(m_table);
  const QString unit = toQt(m_unit->symbol);
  m_table->setHorizontalHeaderLabels({tr("Position"), tr("x, %1").arg(unit), tr("y, %1").arg(unit)});
  m_table->setRowCount(static_cast<int>(m_points.size()));
  const auto all = positions(layout);
  for (int row = 0; row < m_table->rowCount(); ++row) {
    const auto index = static_cast<std::size_t>(row);
    const QString texts[] = {all ? toQt((*all)[index].label) : QString::number(row + 1),
                             toQt(numeral(m_points[index].x, *m_unit)),
                             toQt(numeral(m_points[index].y, *m_unit))};
    for (const int column : {LabelColumn, XColumn, YColumn}) {
      auto* item = new QTableWidgetItem(texts[column]);
      item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
      if (column == LabelColumn) item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
      m_table->setItem(row, column, item);
    }
  }
}

void PointTable::addTyped() {
  const auto added = pointsIn(m_typed->text(), *m_unit, m_typed->numberMark());
  if (!added) return m_typed->findTrouble(worded(added.error()));
  std::vector<Point> points = m_points;
  points.insert(points.end(), added->begin(), added->end());
  const std::size_t before = m_points.size();
  m_adding = true;
  emit edited(points);
  m_adding = false;
  if (m_points.size() > before) m_typed->setText({});
}

void PointTable::change(QTableWidgetItem* item) {
  const auto typed = coordinate(fromQt(item->text().trimmed()), *m_unit, Settings().decimalMark());
  if (!typed) {
    m_found->setText(worded(typed.error()));
    m_found->show();
    return;
  }
  std::vector<Point> points = m_points;
  Point& point = points[static_cast<std::size_t>(item->row())];
  (item->column() == XColumn ? point.x : point.y) = *typed;
  emit edited(points);
}

void PointTable::removeCurrent() {
  const int row = m_table->currentRow();
  if (row >= 0) emit removed(static_cast<std::size_t>(row));
}

bool PointTable::eventFilter(QObject* watched, QEvent* event) {
  const bool isDelete =
      event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete;
  if (isDelete) removeCurrent();
  return isDelete || QWidget::eventFilter(watched, event);
}

bool PointTable::refuse(const Error& error) {
  if (m_adding) return m_typed->findTrouble(worded(error)), true;
  m_found->setText(worded(error));
  m_found->show();
  return true;
}

}  // namespace cw
