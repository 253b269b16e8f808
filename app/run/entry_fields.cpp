#include "app/run/entry_fields.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "app/run/touch.h"
#include "core/units/format.h"
#include "core/units/parse.h"
#include "core/units/stated_json.h"

namespace cw {
namespace {

struct FieldWords {
  std::string_view key;
  const char* words;
};

constexpr FieldWords kWords[] = {
    {"renewed", QT_TRANSLATE_NOOP("cw::EntryFields", "A new part was fitted")},
    {"batch", QT_TRANSLATE_NOOP("cw::EntryFields", "Batch, from the pack")},
    {"expiry", QT_TRANSLATE_NOOP("cw::EntryFields", "Good until (year-month-day)")},
    {"answer", QT_TRANSLATE_NOOP("cw::EntryFields", "What the check found")},
    {"remark", QT_TRANSLATE_NOOP("cw::EntryFields", "Remark")},
    {"value", QT_TRANSLATE_NOOP("cw::EntryFields", "Reading, the number")},
    {"unit", QT_TRANSLATE_NOOP("cw::EntryFields", "Its unit")},
    {"gauge", QT_TRANSLATE_NOOP("cw::EntryFields", "Gauge it was read from")},
    {"count", QT_TRANSLATE_NOOP("cw::EntryFields", "How many went to the face by finger")},
    {"stuck", QT_TRANSLATE_NOOP("cw::EntryFields", "Positions that would not go, with ; between them")},
    {"known", QT_TRANSLATE_NOOP("cw::EntryFields", "How it is known")},
    {"reading", QT_TRANSLATE_NOOP("cw::EntryFields", "Reading, with its unit; empty for a click")},
    {"moved", QT_TRANSLATE_NOOP("cw::EntryFields", "Positions that moved, with ; between them")},
    {"gaps",
     QT_TRANSLATE_NOOP("cw::EntryFields", "Gaps going round, each with its unit, with ; between them")},
    {"reason", QT_TRANSLATE_NOOP("cw::EntryFields", "Why the gaps were let be")},
};

// One overload for each closed list that a correctable field holds.
QString wordsOf(Answer answer) {
  return answer == Answer::Yes ? EntryFields::tr("yes, it is so") : EntryFields::tr("no, it is not");
}
QString wordsOf(Known known) {
  switch (known) {
    case Known::Clicked:
      return EntryFields::tr("clicked at the setting");
    case Known::Read:
      return EntryFields::tr("read on the wrench");
    case Known::Instrument:
      return EntryFields::tr("read on an instrument");
  }
  return {};
}

QString textOf(const std::string& text) {
  return toQt(text);
}
QString textOf(const StatedLength& length) {
  return toQt(text(length));
}

Result<Json> read(const std::string& text, std::string*) {
  return Json(text);
}
template <class Tag>
Result<Json> read(const std::string& text, Stated<Tag>*) {
  return parse<Tag>(text, Settings().decimalMark()).map([](const Stated<Tag>& value) {
    return toJson(value);
  });
}

/// Between lengths only a semicolon: a comma may be a decimal mark.
bool isBetween(QChar c, const std::string*) {
  return c == QLatin1Char(';') || c == QLatin1Char(',');
}
bool isBetween(QChar c, const StatedLength*) {
  return c == QLatin1Char(';');
}

template <class T>
QStringList partsOf(const QString& list) {
  QStringList out(QString{});
  for (const QChar c : list) {
    if (isBetween(c, static_cast<T*>(nullptr)))
      out << QString();
    else
      out.back() += c;
  }
  for (QString& part : out) part = part.trimmed();
  out.removeAll(QString());
  return out;
}

}  // namespace

QString wordsForField(std::string_view key) {
  for (const FieldWords& each : kWords)
    if (each.key == key) return EntryFields::tr(each.words);
  return {};
}

/// Makes a field of each type that a correction may change; what it may not touch gets none.
class EntryFields::Builder {
 public:
  explicit Builder(EntryFields& form) : m_form(form) {}

  template <class T>
  void operator()(std::string_view key, const T& value) {
    if constexpr (!kStays<T>) add(key, value);
  }

 private:
  void add(std::string_view key, const std::string& value) {
    line(key, toQt(value), [isNumber = key == "value"](const std::string& typed) -> Result<Json> {
      if (!isNumber) return Json(typed);
      // A reading that is no number is refused by the rules in their own words, so it goes there as typed.
      const auto number = parseNumber(typed, Settings().decimalMark(), true);
      return Json(number ? *number : typed);
    });
  }
  void add(std::string_view key, int value) {
    line(key, QString::number(value), [place = std::string(key)](const std::string& typed) -> Result<Json> {
      bool isNumber = false;
      const int number = toQt(typed).toInt(&isNumber);
      if (isNumber && number >= 0) return Json(number);
      return fail(ErrorCode::InvalidInput, place, typed, {"“%1” is no count", {shown(typed)}},
                  "write a whole number");
    });
  }
  void add(std::string_view key, bool value) {
    choice(key, {{tr("yes"), Json(true)}, {tr("no"), Json(false)}}, value ? 0 : 1);
  }
  template <class E>
  requires std::is_enum_v<E>
  void add(std::string_view key, E value) {
    std::vector<std::pair<QString, Json>> all;
    int now = 0;
    for (const auto& [each, word] : cw::Words<E>::kAll) {
      if (each == value) now = static_cast<int>(all.size());
      all.emplace_back(wordsOf(each), Json(std::string(word)));
    }
    choice(key, std::move(all), now);
  }
  void add(std::string_view key, const StatedTorque& value) { add(key, std::optional(value)); }
  template <class Tag>
  void add(std::string_view key, const std::optional<Stated<Tag>>& value) {
    line(key, value ? toQt(text(*value)) : QString(), [](const std::string& typed) -> Result<Json> {
      if (typed.empty()) return Json();
      return read(typed, static_cast<Stated<Tag>*>(nullptr));
    });
  }
  template <class T>
  void add(std::string_view key, const std::vector<T>& values) {
    QStringList standing;
    for (const T& value : values) standing << textOf(value);
    line(key, standing.join(QStringLiteral("; ")), [](const std::string& typed) -> Result<Json> {
      Json::Array out;
      for (const QString& part : partsOf<T>(toQt(typed))) {
        CW_TRY(one, read(fromQt(part), static_cast<T*>(nullptr)));
        out.push_back(std::move(one));
      }
      return Json(std::move(out));
    });
  }

  void line(std::string_view key, const QString& standing,
            std::function<Result<Json>(const std::string&)> read) {
    auto* field = new QLineEdit(standing);
    fitForTouch(*field);
    put(key, *field,
        {std::string(key), [=] { return field->text().trimmed() != standing; },
         [=] { return read(fromQt(field->text().trimmed())); }});
  }
  void choice(std::string_view key, std::vector<std::pair<QString, Json>> all, int standing) {
    QComboBox* box = touchChoice({});
    for (const auto& [words, value] : all) box->addItem(words);
    box->setCurrentIndex(standing);
    put(key, *box,
        {std::string(key), [=] { return box->currentIndex() != standing; },
         [=]() -> Result<Json> { return all[static_cast<std::size_t>(box->currentIndex())].second; }});
  }
  void put(std::string_view key, QWidget& field, Field made) {
    field.setObjectName(toQt(key) + QLatin1String("Correction"));
    for (QWidget* part : {static_cast<QWidget*>(labelFor(field, wordsForField(key))), &field}) {
      m_form.m_column->addWidget(part);
      part->show();  // a layout would do so only with the next events
    }
    m_form.m_fields.push_back(std::move(made));
  }

  EntryFields& m_form;
};

EntryFields::EntryFields(QWidget* parent) : QWidget(parent), m_column(new QVBoxLayout(this)) {
  m_column->setContentsMargins(0, 0, 0, 0);
  m_column->setSpacing(8);
}

void EntryFields::clear() {
  m_fields.clear();
  while (QLayoutItem* item = m_column->takeAt(0)) {
    delete item->widget();
    delete item;
  }
}

void EntryFields::present(const Body& body) {
  clear();
  Builder builder(*this);
  std::visit(
      [&]<class T>(const T& entry) {
        if constexpr (T::kCorrection == Correction::Values) T::fields(entry, builder);
      },
      body);
}

Result<Json> EntryFields::changed() const {
  Json out(Json::Object{});
  for (const Field& field : m_fields) {
    if (!field.isChanged()) continue;
    auto typed = field.typed();
    if (!typed) {
      Error error = typed.error();
      error.place = fromQt(wordsForField(field.key));
      return fail(std::move(error));
    }
    out.set(field.key, *std::move(typed));
  }
  return out;
}

}  // namespace cw
