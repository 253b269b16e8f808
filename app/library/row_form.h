#pragma once
#include <QWidget>
#include <map>
#include <string>
#include <vector>

#include "core/base/error.h"
#include "core/fastener/tables.h"

class QLabel;
class QLineEdit;
class QScrollArea;
class QVBoxLayout;

namespace cw {

/// One row of the library to fill in: a field for each column of its kind but the author, who signs; what is
/// wrong stands under the field where it is.
class RowForm final : public QWidget {
  Q_OBJECT

 public:
  explicit RowForm(QWidget* parent = nullptr);

  /// Shows the fields of that kind, filled with the cells, which stand in the order of columnsOf.
  void ask(RowKind kind, const std::vector<std::string>& cells, const QString& states);
  RowKind kind() const { return m_kind; }
  /// What stands in the fields, with that author.
  std::vector<std::string> cells(const std::string& author) const;
  /// Says it under the field of the error's column, else above all.
  void showRefusal(const Error& error);

 signals:
  void wanted();  ///< the row is filled in, to be signed
  void left();

 private:
  struct Field {
    QLineEdit* edit;
    QLabel* said;
  };
  void addField(QVBoxLayout& into, const std::string& column, const std::string& cell);
  void forget();

  RowKind m_kind = RowKind::Thread;
  QScrollArea* m_scroll;
  QWidget* m_foot;
  QLabel *m_states, *m_said;
  std::map<std::string, Field> m_byColumn;
};

}  // namespace cw
