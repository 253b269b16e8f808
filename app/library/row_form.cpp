#include "app/library/row_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/library/column_words.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "app/look/style.h"

namespace cw {
namespace {

constexpr int kRowFieldLetters = 56, kSpace = 8;
constexpr const char* kAuthor = "author";

}  // namespace

RowForm::RowForm(QWidget* parent)
    : QWidget(parent),
      m_scroll(new QScrollArea),
      m_states(textLabel({}, deskFont(1, QFont::Bold))),
      m_said(textLabel({}, deskFont(0, QFont::Bold), QPalette::BrightText)) {
  auto* down = new QVBoxLayout(this);
  down->setContentsMargins(0, 0, 0, 0);
  down->setSpacing(kSpace);
  down->addWidget(m_states);
  down->addWidget(m_said);
  m_scroll->setWidgetResizable(true);
  m_scroll->setFrameShape(QFrame::NoFrame);
  m_scroll->setFocusPolicy(Qt::NoFocus);
  m_said->setObjectName(QStringLiteral("rowSaid"));
  down->addWidget(m_scroll, 1);
  m_foot = new QWidget;
  auto* foot = new QHBoxLayout(m_foot);
  foot->setContentsMargins(0, 0, 0, 0);
  auto* sign = new QPushButton(tr("Sign it…"));
  sign->setObjectName(QStringLiteral("rowSignButton"));
  sign->setProperty(kMainProperty, true);
  auto* leave = new QPushButton(tr("Leave it"));
  leave->setObjectName(QStringLiteral("rowLeaveButton"));
  foot->addWidget(sign);
  foot->addWidget(leave);
  foot->addStretch(1);
  down->addWidget(m_foot);
  connect(sign, &QPushButton::clicked, this, [this] { forget(), emit wanted(); });
  connect(leave, &QPushButton::clicked, this, &RowForm::left);
}

void RowForm::ask(RowKind kind, const std::vector<std::string>& cells, const QString& states) {
  m_kind = kind;
  m_states->setText(states);
  m_byColumn.clear();
  auto* fields = new QWidget;
  auto* down = new QVBoxLayout(fields);
  down->setSpacing(kSpace / 2);
  const std::vector<std::string> columns = columnsOf(kind);
  for (std::size_t i = 0; i < columns.size(); ++i)
    if (columns[i] != kAuthor) addField(*down, columns[i], i < cells.size() ? cells[i] : std::string());
  down->addStretch(1);
  m_scroll->setWidget(fields);  // deletes the one before
  orderTabs({m_scroll, m_foot});
  forget();
  m_byColumn.at(columns.front()).edit->setFocus(Qt::TabFocusReason);
}

void RowForm::addField(QVBoxLayout& into, const std::string& column, const std::string& cell) {
  auto* label = textLabel(columnText(column), deskFont(), QPalette::PlaceholderText);
  auto* edit = new QLineEdit(toQt(cell));
  auto* said = textLabel({}, deskFont(0, QFont::Bold), QPalette::BrightText);
  edit->setObjectName(toQt(column) + QLatin1String("Cell"));
  edit->setAccessibleName(label->text());
  edit->setPlaceholderText(columnHint(column));
  edit->setMaximumWidth(edit->fontMetrics().averageCharWidth() * kRowFieldLetters);
  label->setBuddy(edit);
  into.addWidget(label);
  into.addWidget(edit);
  into.addWidget(said);
  said->hide();
  connect(edit, &QLineEdit::returnPressed, this, [this] { forget(), emit wanted(); });
  m_byColumn[column] = {edit, said};
}

std::vector<std::string> RowForm::cells(const std::string& author) const {
  std::vector<std::string> out;
  for (const std::string& column : columnsOf(m_kind))
    out.push_back(column == kAuthor ? author : fromQt(m_byColumn.at(column).edit->text()));
  return out;
}

void RowForm::forget() {
  m_said->hide();
  for (const auto& [column, field] : m_byColumn) field.said->hide();
}

void RowForm::showRefusal(const Error& error) {
  const std::size_t comma = error.place.rfind(", ");
  const auto field =
      m_byColumn.find(comma == std::string::npos ? std::string() : error.place.substr(comma + 2));
  QLabel* said = field == m_byColumn.end() ? m_said : field->second.said;
  said->setText(worded(error));
  said->show();
  if (field == m_byColumn.end()) return;
  m_scroll->ensureWidgetVisible(field->second.said);
  field->second.edit->setFocus(Qt::OtherFocusReason);
}

}  // namespace cw
