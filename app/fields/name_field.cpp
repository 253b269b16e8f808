#include "app/fields/name_field.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QLineEdit>
#include <QStandardItemModel>

namespace cw {
namespace {

constexpr int kNameRole = Qt::UserRole, kChoicesShown = 10;

/// Matches anywhere in name and other names, and writes the name alone.
class NameCompleter final : public QCompleter {
 public:
  NameCompleter(const std::vector<NameField::Choice>& choices, QObject* parent) : QCompleter(parent) {
    auto* model = new QStandardItemModel(this);
    for (const NameField::Choice& choice : choices) {
      auto* item = new QStandardItem(
          choice.also.isEmpty() ? choice.name : choice.name + QStringLiteral("  (%1)").arg(choice.also));
      item->setData(choice.name, kNameRole);
      model->appendRow(item);
    }
    setModel(model);
    setCaseSensitivity(Qt::CaseInsensitive);
    setFilterMode(Qt::MatchContains);
    setMaxVisibleItems(kChoicesShown);
  }
  QString pathFromIndex(const QModelIndex& index) const override { return index.data(kNameRole).toString(); }
};

}  // namespace

NameField::NameField(const Words& words, const std::vector<Choice>& choices, Resolve resolve)
    : InputField(words), m_resolve(std::move(resolve)) {
  auto* completer = new NameCompleter(choices, this);
  completer->popup()->setAccessibleName(words.label);
  edit()->setCompleter(completer);
  connect(edit(), &QLineEdit::editingFinished, completer->popup(), &QWidget::hide);
  // A choice made in the list is as good as typed.
  connect(completer, QOverload<const QString&>::of(&QCompleter::activated), this,
          [this](const QString& name) {
            setText(name);
            emit edited();
          });
}

std::optional<QString> NameField::understood() const {
  if (empty()) return QString();
  const auto found = m_resolve(text(), numberMark());
  return found ? std::optional(*found) : std::nullopt;
}

QString NameField::problem() const {
  if (empty()) return {};
  const auto found = m_resolve(text(), numberMark());
  return found ? QString() : worded(found.error());
}

}  // namespace cw
