#include "app/documents/column_fit.h"

#include <gmock/gmock.h>

#include <QHeaderView>
#include <QStandardItemModel>
#include <QTableView>

namespace cw {
namespace {

/// A list of tools, as wide as wanted.
class FittedList : public testing::Test {
 protected:
  FittedList() {
    m_model.setHorizontalHeaderLabels(
        {QStringLiteral("Tool"), QStringLiteral("Range"), QStringLiteral("Due"), QStringLiteral("Standing")});
    addRow({QStringLiteral("T-07\nclick wrench, 1/4 in drive"), QStringLiteral("20–150 in·lbf"),
            QStringLiteral("2027-03-03"), QStringLiteral("in date")});
    addRow({QStringLiteral("T-09\nclick wrench, 1/4 in drive"), QStringLiteral("20–150 in·lbf"),
            QStringLiteral("2026-02-10"), QStringLiteral("its calibration ran out on 2026-02-10")});
    m_list.setModel(&m_model);
    m_list.verticalHeader()->hide();
    new ColumnFit(m_list);
    m_list.show();
  }
  void addRow(const QStringList& cells) {
    QList<QStandardItem*> row;
    for (const QString& cell : cells) row << new QStandardItem(cell);
    m_model.appendRow(row);
  }
  int shownColumns() const {
    int out = 0;
    for (int column = 0; column < m_model.columnCount(); ++column) out += !m_list.isColumnHidden(column);
    return out;
  }
  /// Lines that Qt itself makes of the text in the column's width.
  int linesOf(int row, int column) const {
    const QRect room(0, 0, m_list.columnWidth(column) - 8, 10000);
    const QFontMetrics metrics = m_list.fontMetrics();
    return metrics.boundingRect(room, Qt::TextWordWrap, m_model.item(row, column)->text()).height() /
           metrics.lineSpacing();
  }

  QStandardItemModel m_model;
  QTableView m_list;
};

TEST_F(FittedList, FillsItsWidthAndKeepsTheFirstAndTheLast) {
  for (int width = 260; width < 1200; width += 17) {
    m_list.resize(width, 400);
    EXPECT_FALSE(m_list.isColumnHidden(0)) << width;
    EXPECT_FALSE(m_list.isColumnHidden(3)) << width;
    EXPECT_EQ(m_list.horizontalHeader()->length(), m_list.viewport()->width()) << width;
  }
}

TEST_F(FittedList, KeepsRowsLowAndLetsAColumnLeaveForIt) {
  for (int width = 300; width < 1200; width += 17) {
    m_list.resize(width, 400);
    for (int column = 0; column < m_model.columnCount(); ++column)
      if (!m_list.isColumnHidden(column)) EXPECT_LE(linesOf(1, column), 3) << width << ", column " << column;
  }
}

TEST_F(FittedList, ShowsMoreColumnsTheMoreRoomThereIs) {
  int before = 2;
  for (int width = 260; width < 1200; width += 17) {
    m_list.resize(width, 400);
    EXPECT_GE(shownColumns(), before) << width;
    before = shownColumns();
  }
  EXPECT_EQ(before, 4);
}

}  // namespace
}  // namespace cw
