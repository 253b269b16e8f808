#pragma once
#include <QSortFilterProxyModel>
#include <QWidget>

#include "core/report/document.h"

class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QStackedLayout;
class QTableView;

namespace cw {

class DocumentView;
class SignForm;
class Workspace;

/// How the places at the desk are laid out: a list with its search on the left; on the right one thing, its
/// actions at its top, what was said of them below, then the thing as a document. Ctrl+F searches, Down and
/// Enter go to the list.
class DeskPage final : public QWidget {
  Q_OBJECT

 public:
  struct Words {
    QString list;         ///< "Records"
    QString searchHint;   ///< "Search work order, machine …"
    QString whenNothing;  ///< on the right while nothing is chosen
  };
  DeskPage(Workspace& workspace, QAbstractItemModel& rows, const Words& words, QWidget* parent = nullptr);

  QLineEdit* search() const { return m_search; }
  QTableView* list() const { return m_list; }
  DocumentView* thing() const { return m_thing; }
  SignForm* form() const { return m_form; }

  void addBesideSearch(QWidget* widget);
  void addBelowList(QWidget* widget);
  void addAction(QWidget* widget);
  QPushButton* addAction(const QString& text, const char* name);

  /// Shows only rows that hold the text in some column.
  void filter(const QString& text);
  /// What stands under the search: how many, or what is wrong.
  void count(const QString& text);
  /// Makes a row of the model the chosen one; -1: the first shown, if there is one.
  void choose(int row);
  int chosenRow() const;  ///< -1 for none

  void present(Document document);
  /// A form in place of the thing; it belongs to the page from then on.
  void presentForm(QWidget* form);
  /// Nothing to show: says what to do next.
  void presentNothing(const QString& text);
  void say(const QString& sentence);
  void sayTrouble(const QString& sentence);

 signals:
  void chosen(int row);  ///< of the model; -1 for none

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  void showEvent(QShowEvent* event) override;

 private:
  QWidget* makeListSide(const Words& words);
  QWidget* makeThingSide();
  void setUpList(QAbstractItemModel& rows, const QString& name);
  void fitRows();
  void fitHint();
  void say(const QString& sentence, QPalette::ColorRole ink);

  QSortFilterProxyModel m_sorted;
  QLineEdit* m_search;
  QTableView* m_list;
  QLabel *m_count, *m_said, *m_nothing;
  QLayout *m_besideSearch, *m_belowList, *m_actionRow;
  QWidget *m_filters, *m_below, *m_actions;
  QStackedLayout* m_stack;
  SignForm* m_form;
  DocumentView* m_thing;
};

}  // namespace cw
