#pragma once
#include <QAbstractTableModel>
#include <functional>
#include <optional>
#include <vector>

namespace cw {

/// A table over values: one column is a header, how to say a row in it, and what to sort it by.
template <class Row>
class RowModel final : public QAbstractTableModel {
 public:
  struct Column {
    QString header;
    std::function<QString(const Row&)> text;
    std::function<QVariant(const Row&)> sortKey{};  ///< empty: by the text
    Qt::Alignment alignment = Qt::AlignLeft | Qt::AlignVCenter;
  };

  explicit RowModel(std::vector<Column> columns, QObject* parent = nullptr)
      : QAbstractTableModel(parent), m_columns(std::move(columns)) {}

  void setRows(std::vector<Row> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
  }
  const std::vector<Row>& rows() const { return m_rows; }
  const Row& row(int index) const { return m_rows.at(static_cast<std::size_t>(index)); }

  int rowCount(const QModelIndex& parent = {}) const override {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
  }
  int columnCount(const QModelIndex& parent = {}) const override {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
  }
  QVariant data(const QModelIndex& index, int role) const override {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Column& column = m_columns[static_cast<std::size_t>(index.column())];
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    if (role == Qt::DisplayRole) return column.text(row);
    if (role == Qt::TextAlignmentRole) return column.alignment.toInt();
    if (role == Qt::UserRole) return column.sortKey ? column.sortKey(row) : QVariant(column.text(row));
    return {};
  }
  QVariant headerData(int section, Qt::Orientation orientation, int role) const override {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
    const Column& column = m_columns[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole) return column.header;
    if (role == Qt::TextAlignmentRole) return column.alignment.toInt();
    return {};
  }

 private:
  std::vector<Column> m_columns;
  std::vector<Row> m_rows;
};

}  // namespace cw
