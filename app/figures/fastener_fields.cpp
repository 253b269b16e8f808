#include "app/figures/fastener_fields.h"

#include <QCoreApplication>
#include <QSet>
#include <algorithm>

#include "app/figures/figure.h"
#include "core/base/near_name.h"
#include "core/fastener/condition_text.h"
#include "core/fastener/folded_name.h"

namespace cw {
namespace {

class Texts {
  Q_DECLARE_TR_FUNCTIONS(FastenerFields)
};

constexpr const char* kNotStated = "not stated";

bool isNotStated(const std::string& text) {
  const std::string folded = foldedName(text);
  return folded == foldedName(kNotStated) || folded == "unknown";
}

using Choices = std::vector<NameField::Choice>;

QString joinedNames(const std::vector<std::string>& names) {
  QStringList out;
  for (const std::string& name : names) out << toQt(name);
  return out.join(QStringLiteral(", "));
}

/// What is offered while somebody types. If the shop's rows cannot be read, the field says so as soon as a
/// name is to mean something.
const Library& offered(const FigureDesk& desk) {
  const auto all = desk.catalogue();
  return all ? (*all)->rows() : shippedCatalogue().rows();
}

/// One choice for all rows of a name.
template <class Row, class NameOf, class AlsoOf>
Choices choicesOf(const std::vector<Row>& rows, NameOf nameOf, AlsoOf alsoOf) {
  Choices out;
  QSet<QString> seen;
  for (const Row& row : rows) {
    const QString name = toQt(nameOf(row));
    if (seen.contains(name)) continue;
    seen.insert(name);
    out.push_back({name, alsoOf(row)});
  }
  return out;
}

template <class Row>
Choices namedChoices(const std::vector<Row>& rows) {
  return choicesOf(
      rows, [](const Row& row) { return row.name; }, [](const Row& row) { return joinedNames(row.aliases); });
}

template <class T>
Result<T> at(const NameField& field, Result<T> found) {
  return found.map_error([&](Error error) { return error.place = fromQt(field.name()), error; });
}

/// The grade by its name alone, whatever the size.
Result<QString> gradeNamed(const Catalogue& catalogue, const std::string& text) {
  const std::string wanted = foldedName(text);
  const auto means = [&](const std::string& name) { return foldedName(name) == wanted; };
  for (const Grade& grade : catalogue.rows().grades)
    if (means(grade.name) || std::any_of(grade.aliases.begin(), grade.aliases.end(), means))
      return toQt(grade.name);
  const auto refused = catalogue.grade(text, catalogue.rows().threads.front());
  return refused.map([](const Grade& grade) { return toQt(grade.name); });
}

Result<QString> faceNamed(const Catalogue& catalogue, const std::string& text) {
  std::vector<std::string_view> kinds;
  for (const Head& head : catalogue.rows().heads) {
    if (head.kind == text) return toQt(text);
    kinds.push_back(head.kind);
  }
  const auto near = nearNames(text, kinds);
  return fail(ErrorCode::NotFound, "face", text, {"the library has no bearing face “%1”", {shown(text)}},
              near.empty() ? Message("it has for example hex, hex flange, socket head and washer")
                           : Message("%1", {didYouMean(near)}));
}

}  // namespace

NameField* threadField(const FigureDesk& desk, bool optional) {
  return new NameField(
      {QStringLiteral("thread"), Texts::tr("Thread"), Texts::tr("M8, M8x1, 3/8-16 UNC, #10-32"), optional},
      choicesOf(
          offered(desk).threads, [](const Thread& row) { return row.designation; },
          [](const Thread& row) { return toQt(row.note); }),
      [&desk](const std::string& text, DecimalMark) -> Result<QString> {
        CW_TRY(catalogue, desk.catalogue());
        CW_TRY(thread, catalogue->thread(text));
        return toQt(thread.designation);
      });
}

NameField* gradeField(const FigureDesk& desk, bool optional) {
  return new NameField(
      {QStringLiteral("grade"), Texts::tr("Strength grade"), Texts::tr("8.8, A2-70, SAE 5"), optional},
      namedChoices(offered(desk).grades), [&desk](const std::string& text, DecimalMark) -> Result<QString> {
        CW_TRY(catalogue, desk.catalogue());
        return gradeNamed(*catalogue, text);
      });
}

NameField* conditionField(const FigureDesk& desk, const char* name, const QString& label, ConditionOf what,
                          bool optional) {
  const bool mayBeUnknown = what == ConditionOf::Specification;
  Choices choices = namedChoices(offered(desk).conditions);
  if (mayBeUnknown) choices.push_back({QLatin1String(kNotStated), Texts::tr("unknown")});
  return new NameField({QLatin1String(name), label, Texts::tr("dry, oiled, K 0.2 or µ 0.12"), optional},
                       choices,
                       [&desk, mayBeUnknown](const std::string& text, DecimalMark mark) -> Result<QString> {
                         if (mayBeUnknown && isNotStated(text)) return QString::fromLatin1(kNotStated);
                         CW_TRY(catalogue, desk.catalogue());
                         CW_TRY(condition, writtenCondition(text, *catalogue, mark));
                         return toQt(condition.name);
                       });
}

NameField* faceField(const FigureDesk& desk) {
  return new NameField({QStringLiteral("face"), Texts::tr("What turns on the part"),
                        Texts::tr("hex, hex flange, washer"), true},
                       choicesOf(
                           offered(desk).heads, [](const Head& row) { return row.kind; },
                           [](const Head&) { return QString(); }),
                       [&desk](const std::string& text, DecimalMark) -> Result<QString> {
                         CW_TRY(catalogue, desk.catalogue());
                         return faceNamed(*catalogue, text);
                       });
}

NameField* materialField(const FigureDesk& desk, bool optional) {
  return new NameField({QStringLiteral("material"), Texts::tr("Tapped material"),
                        Texts::tr("grey iron, 6061, steel S235"), optional},
                       namedChoices(offered(desk).materials),
                       [&desk](const std::string& text, DecimalMark) -> Result<QString> {
                         CW_TRY(catalogue, desk.catalogue());
                         CW_TRY(material, catalogue->material(text));
                         return toQt(material.name);
                       });
}

Result<Thread> threadIn(const FigureDesk& desk, const NameField& field) {
  CW_TRY(catalogue, desk.catalogue());
  return at(field, catalogue->thread(field.text()));
}

Result<std::optional<Grade>> gradeIn(const FigureDesk& desk, const NameField& field, const Thread& thread) {
  if (field.empty()) return std::optional<Grade>();
  CW_TRY(catalogue, desk.catalogue());
  return at(field, catalogue->grade(field.text(), thread)).map([](const Grade& row) {
    return std::optional(row);
  });
}

Result<std::optional<Condition>> conditionIn(const FigureDesk& desk, const NameField& field) {
  if (field.empty() || isNotStated(field.text())) return std::optional<Condition>();
  CW_TRY(catalogue, desk.catalogue());
  return at(field, writtenCondition(field.text(), *catalogue, field.numberMark()))
      .map([](const Condition& row) { return std::optional(row); });
}

Result<std::optional<BearingFace>> faceIn(const FigureDesk& desk, const NameField& field,
                                          const Thread& thread) {
  if (field.empty()) return std::optional<BearingFace>();
  CW_TRY(catalogue, desk.catalogue());
  return at(field, catalogue->bearingFace(field.text(), thread)).map([](const BearingFace& row) {
    return std::optional(row);
  });
}

Result<std::optional<TappedMaterial>> materialIn(const FigureDesk& desk, const NameField& field) {
  if (field.empty()) return std::optional<TappedMaterial>();
  CW_TRY(catalogue, desk.catalogue());
  return at(field, catalogue->material(field.text())).map([](const TappedMaterial& row) {
    return std::optional(row);
  });
}

}  // namespace cw
