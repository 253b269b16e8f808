#include "app/figures/fastener_form.h"

#include <QCoreApplication>

#include "app/fields/text_field.h"
#include "core/report/outcome.h"
#include "core/units/percent.h"

namespace cw {
namespace {

class FormTexts {
  Q_DECLARE_TR_FUNCTIONS(FastenerForm)
};

constexpr const char* kBases[] = {"nut factor", "long form"};

}  // namespace

void FastenerPage::remarkInputs() {
  if (m_torque == nullptr || m_torque->empty() || !m_torque->problem().isEmpty()) return;
  const auto known = subject();
  if (!known || !*known) return;
  const auto torque = m_torque->stated();
  const auto judgement = judge(*torque, **known);
  if (!judgement) return;
  const GuardRemark remark = guardRemark(*judgement);
  QStringList sentences;
  if (const QString own = m_torque->remark(); !own.isEmpty()) sentences << own;
  for (const Message& each : remark.sentences) sentences << worded(each);
  const QString all = sentences.join(QLatin1Char(' '));
  remark.trouble ? m_torque->findTrouble(all) : m_torque->find(all);
}

Result<GuardSubject> FastenerForm::subject() const {
  GuardSubject out;
  CW_TRY(screw, threadIn(desk, *thread));
  out.thread = screw;
  if (grade != nullptr) {
    CW_TRY(found, gradeIn(desk, *grade, screw));
    out.grade = found;
  }
  if (condition != nullptr) {
    CW_TRY(found, conditionIn(desk, *condition));
    out.condition = found;
  }
  if (face != nullptr) {
    CW_TRY(found, faceIn(desk, *face, screw));
    out.face = found;
  }
  if (material == nullptr || engagement == nullptr || material->empty() || engagement->empty()) return out;
  CW_TRY(tapped, materialIn(desk, *material));
  CW_TRY(length, engagement->stated());
  out.hole = TappedHole{*tapped, length.value()};
  return out;
}

TextField* deviationField(bool optional) {
  return new TextField({QStringLiteral("deviation"), FormTexts::tr("Deviation of the torque tool"),
                        QStringLiteral("4 %"), optional},
                       [](const std::string& text, DecimalMark mark) -> Result<void> {
                         CW_CHECK(parsePercent(text, mark));
                         return {};
                       });
}

Result<std::optional<double>> deviationIn(const TextField& field) {
  if (field.empty()) return std::optional<double>();
  return parsePercent(field.text(), field.numberMark())
      .map([](double share) { return std::optional(share); })
      .map_error([&](Error error) { return error.place = fromQt(field.name()), error; });
}

NameField* basisField() {
  std::vector<NameField::Choice> choices;
  for (const char* name : kBases) choices.push_back({QLatin1String(name), {}});
  return new NameField(
      {QStringLiteral("basis"), FormTexts::tr("Formula"), FormTexts::tr("nut factor or long form"), true},
      choices, [](const std::string& text, DecimalMark) -> Result<QString> {
        for (const char* name : kBases)
          if (text == name) return QString::fromLatin1(name);
        return fail(ErrorCode::NotFound, "basis", text, {"“%1” is no formula here", {shown(text)}},
                    "write nut factor or long form");
      });
}

std::optional<Basis> basisIn(const NameField& field) {
  if (field.empty()) return std::nullopt;
  return field.text() == kBases[0] ? Basis::NutFactor : Basis::LongForm;
}

}  // namespace cw
