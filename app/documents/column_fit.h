#pragma once
#include <QFont>
#include <QHash>
#include <QObject>

class QTableView;

namespace cw {

/// Shares a list's width among its columns so that no word is cut and rows take few lines. Where there is no
/// room for all, as with large text, the first and the last stay and those between leave, the last of them
/// first: what they say stands beside the list anyway.
class ColumnFit final : public QObject {
  Q_OBJECT

 public:
  explicit ColumnFit(QTableView& list);
  void fit();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Measured;
  Measured measured(int column);
  int widthOfWord(const QString& word);

  QTableView& m_list;
  QFont m_measuredIn;
  QHash<QString, int> m_wordWidths;  ///< in that font
};

}  // namespace cw
