#include "app/library/column_words.h"

#include <QCoreApplication>
#include <map>

#include "app/common/wording.h"

namespace cw {
namespace {

struct ColumnWords {
  const char* text;
  const char* hint = "";
};

const std::map<std::string, ColumnWords>& columnWords() {
  static const std::map<std::string, ColumnWords> kWords{
      {"designation", {QT_TRANSLATE_NOOP("LibraryColumns", "Designation"), "M12x0.75, 3/8-20"}},
      {"diameter", {QT_TRANSLATE_NOOP("LibraryColumns", "Diameter of the thread")}},
      {"pitch",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Pitch, mm"),
        QT_TRANSLATE_NOOP("LibraryColumns", "empty for an inch thread")}},
      {"threads_per_inch",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Threads per inch"),
        QT_TRANSLATE_NOOP("LibraryColumns", "empty for a metric thread")}},
      {"stress_area",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Stress area, in the square of the unit"),
        QT_TRANSLATE_NOOP("LibraryColumns", "empty: by the formula")}},
      {"unit", {QT_TRANSLATE_NOOP("LibraryColumns", "Unit of the row"), "mm, in, MPa, ksi, N.m, lbf.in, %"}},
      {"name", {QT_TRANSLATE_NOOP("LibraryColumns", "Name")}},
      {"aliases",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Also called"),
        QT_TRANSLATE_NOOP("LibraryColumns", "one; another")}},
      {"threads", {QT_TRANSLATE_NOOP("LibraryColumns", "For threads"), "metric, unified, both"}},
      {"size_from",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Smallest size"),
        QT_TRANSLATE_NOOP("LibraryColumns", "empty: no lower limit")}},
      {"size_up_to", {QT_TRANSLATE_NOOP("LibraryColumns", "Largest size")}},
      {"size_unit", {QT_TRANSLATE_NOOP("LibraryColumns", "Unit of the sizes"), "mm, in"}},
      {"proof",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Proof stress, least"),
        QT_TRANSLATE_NOOP("LibraryColumns", "empty: none is stated")}},
      {"yield", {QT_TRANSLATE_NOOP("LibraryColumns", "Yield stress, least")}},
      {"tensile", {QT_TRANSLATE_NOOP("LibraryColumns", "Tensile strength, least")}},
      {"stress_unit", {QT_TRANSLATE_NOOP("LibraryColumns", "Unit of the strength"), "MPa, ksi, psi"}},
      {"label", {QT_TRANSLATE_NOOP("LibraryColumns", "As shown")}},
      {"nut_factor_low", {QT_TRANSLATE_NOOP("LibraryColumns", "Nut factor, low")}},
      {"nut_factor_typical", {QT_TRANSLATE_NOOP("LibraryColumns", "Nut factor, typical")}},
      {"nut_factor_high", {QT_TRANSLATE_NOOP("LibraryColumns", "Nut factor, high")}},
      {"thread_friction_low", {QT_TRANSLATE_NOOP("LibraryColumns", "Thread friction, low")}},
      {"thread_friction_typical", {QT_TRANSLATE_NOOP("LibraryColumns", "Thread friction, typical")}},
      {"thread_friction_high", {QT_TRANSLATE_NOOP("LibraryColumns", "Thread friction, high")}},
      {"bearing_friction_low", {QT_TRANSLATE_NOOP("LibraryColumns", "Bearing friction, low")}},
      {"bearing_friction_typical", {QT_TRANSLATE_NOOP("LibraryColumns", "Bearing friction, typical")}},
      {"bearing_friction_high", {QT_TRANSLATE_NOOP("LibraryColumns", "Bearing friction, high")}},
      {"family",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Family"),
        QT_TRANSLATE_NOOP("LibraryColumns", "steel, brass, plastic …")}},
      {"shear_strength", {QT_TRANSLATE_NOOP("LibraryColumns", "Shear strength, least")}},
      {"modulus", {QT_TRANSLATE_NOOP("LibraryColumns", "Young's modulus")}},
      {"caution", {QT_TRANSLATE_NOOP("LibraryColumns", "Caution")}},
      {"kind", {QT_TRANSLATE_NOOP("LibraryColumns", "Kind of head or nut")}},
      {"across_flats", {QT_TRANSLATE_NOOP("LibraryColumns", "Across flats")}},
      {"bearing_diameter",
       {QT_TRANSLATE_NOOP("LibraryColumns", "Bearing diameter"),
        QT_TRANSLATE_NOOP("LibraryColumns", "empty: 0.95 of the flats")}},
      {"close", {QT_TRANSLATE_NOOP("LibraryColumns", "Close fit")}},
      {"normal", {QT_TRANSLATE_NOOP("LibraryColumns", "Normal fit")}},
      {"loose", {QT_TRANSLATE_NOOP("LibraryColumns", "Loose fit")}},
      {"thread", {QT_TRANSLATE_NOOP("LibraryColumns", "Thread")}},
      {"tolerance_class", {QT_TRANSLATE_NOOP("LibraryColumns", "Tolerance class"), "6g, 6H, 2A, 2B"}},
      {"major_min", {QT_TRANSLATE_NOOP("LibraryColumns", "Major diameter, least")}},
      {"major_max", {QT_TRANSLATE_NOOP("LibraryColumns", "Major diameter, most")}},
      {"pitch_min", {QT_TRANSLATE_NOOP("LibraryColumns", "Pitch diameter, least")}},
      {"pitch_max", {QT_TRANSLATE_NOOP("LibraryColumns", "Pitch diameter, most")}},
      {"minor_min", {QT_TRANSLATE_NOOP("LibraryColumns", "Minor diameter, least")}},
      {"minor_max", {QT_TRANSLATE_NOOP("LibraryColumns", "Minor diameter, most")}},
      {"fastener", {QT_TRANSLATE_NOOP("LibraryColumns", "Fastener")}},
      {"minimum", {QT_TRANSLATE_NOOP("LibraryColumns", "Least prevailing torque")}},
      {"type", {QT_TRANSLATE_NOOP("LibraryColumns", "Type"), "I, II"}},
      {"class", {QT_TRANSLATE_NOOP("LibraryColumns", "Class")}},
      {"description", {QT_TRANSLATE_NOOP("LibraryColumns", "What it is")}},
      {"deviation_to_10_Nm", {QT_TRANSLATE_NOOP("LibraryColumns", "Deviation up to 10 N·m, %")}},
      {"deviation_above_10_Nm", {QT_TRANSLATE_NOOP("LibraryColumns", "Deviation above 10 N·m, %")}},
      {"known", {QT_TRANSLATE_NOOP("LibraryColumns", "How it is known: seen or memory"), "seen, memory"}},
      {"source", {QT_TRANSLATE_NOOP("LibraryColumns", "Source: document, edition, table or page")}},
      {"note", {QT_TRANSLATE_NOOP("LibraryColumns", "Remark")}}};
  return kWords;
}

QString inTheirWords(const char* text) {
  return QCoreApplication::translate("LibraryColumns", text);
}

}  // namespace

QString columnText(const std::string& column) {
  const auto found = columnWords().find(column);
  return found == columnWords().end() ? toQt(column) : inTheirWords(found->second.text);
}

QString columnHint(const std::string& column) {
  const auto found = columnWords().find(column);
  const bool plain = found == columnWords().end() || *found->second.hint == '\0';
  return plain ? QString() : inTheirWords(found->second.hint);
}

}  // namespace cw
