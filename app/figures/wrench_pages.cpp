#include "app/figures/wrench_pages.h"

#include <QCoreApplication>

#include "app/fields/text_field.h"
#include "app/figures/fastener_form.h"
#include "core/report/figures.h"
#include "core/units/percent.h"

namespace cw {
namespace {

using AngleField = QuantityField<AngleTag>;

class WrenchTexts {
  Q_DECLARE_TR_FUNCTIONS(WrenchPages)
};

constexpr PrevailingRule kRules[] = {PrevailingRule::AlwaysAdd, PrevailingRule::AddFromOneThird,
                                     PrevailingRule::None};

QString ruleName(PrevailingRule rule) {
  return toQt(wordOf(rule)).replace(QLatin1Char('-'), QLatin1Char(' '));
}

NameField* ruleField() {
  std::vector<NameField::Choice> choices;
  for (const PrevailingRule rule : kRules) choices.push_back({ruleName(rule), {}});
  return new NameField({QStringLiteral("rule"), WrenchTexts::tr("What the specification does with it"),
                        WrenchTexts::tr("always add, add from one third, none"), true},
                       choices, [](const std::string& text, DecimalMark) -> Result<QString> {
                         for (const PrevailingRule rule : kRules)
                           if (toQt(text) == ruleName(rule)) return ruleName(rule);
                         return fail(ErrorCode::NotFound, "rule", text, {"“%1” is no rule", {shown(text)}},
                                     "write always add, add from one third or none");
                       });
}

/// Wrench and adapter as a lever.
struct LeverForm {
  LengthField* length = nullptr;
  LengthField* offset = nullptr;
  AngleField* angle = nullptr;

  static LengthField* lengthField(bool optional) {
    return new LengthField({QStringLiteral("length"), WrenchTexts::tr("Wrench, drive to hand"),
                            WrenchTexts::tr("10 in"), optional});
  }
  static LengthField* offsetField(bool optional) {
    return new LengthField({QStringLiteral("offset"), WrenchTexts::tr("Adapter, drive to fastener"),
                            WrenchTexts::tr("3 in"), optional});
  }
  static AngleField* angleField() {
    return new AngleField(
        {QStringLiteral("angle"), WrenchTexts::tr("Adapter's angle: 0° in line, 180° toward the handle"),
         QStringLiteral("0°"), true},
        &kDegree);
  }

  Result<StatedLever> lever() const {
    CW_TRY(whole, length->stated());
    CW_TRY(beside, offset->stated());
    CW_TRY(turned, angle->statedIfAny());
    return StatedLever{whole, beside, turned};
  }
  /// Nothing where no adapter stands.
  Result<std::optional<StatedLever>> leverIfAny() const {
    if (offset->empty()) return std::optional<StatedLever>();
    if (length->empty())
      return fail(ErrorCode::InvalidInput, "length", "", "with an adapter the wrench's length counts",
                  "measure from the drive's centre to where the hand pulls, for example 10 in");
    return lever().map([](const StatedLever& found) { return std::optional(found); });
  }
};

class SettingPage final : public FastenerPage {
 public:
  explicit SettingPage(FigureDesk& desk)
      : FastenerPage(
            desk, WrenchTexts::tr("Wrench setting"),
            WrenchTexts::tr(
                "What to set, through an adapter, on the wrench's own marks and inside the tolerance.")) {
    m_torque = add(new TorqueField(
        {QStringLiteral("aim"), WrenchTexts::tr("Torque at the fastener"), WrenchTexts::tr("30 N·m")}));
    m_tolerance = add(new TextField({QStringLiteral("tolerance"), WrenchTexts::tr("Tolerance"),
                                     WrenchTexts::tr("±5 %, ±2 N·m, 28 to 32 N·m"), true},
                                    [this](const std::string& text, DecimalMark mark) -> Result<void> {
                                      const auto aim = m_torque->stated();
                                      if (!aim) return {};
                                      CW_CHECK(parseTolerance(text, *aim, mark));
                                      return {};
                                    }));
    m_graduation =
        add(new TorqueField({QStringLiteral("graduation"), WrenchTexts::tr("Wrench, from mark to mark"),
                             WrenchTexts::tr("1 ft·lbf")}));
    m_lever.length = add(LeverForm::lengthField(true));
    m_lever.offset = add(LeverForm::offsetField(true));
    m_lever.angle = add(LeverForm::angleField());
    m_deviation = add(deviationField(true));
    m_prevailing = add(new TorqueField({QStringLiteral("prevailing"),
                                        WrenchTexts::tr("Prevailing torque of a locking fastener"),
                                        WrenchTexts::tr("2 N·m"), true}));
    m_rule = add(ruleField());
    m_form.thread = add(threadField(desk, true));
    m_form.grade = add(gradeField(desk, true));
    m_form.condition =
        add(conditionField(desk, "aimCondition", WrenchTexts::tr("Condition the torque is for"),
                           ConditionOf::Specification, true));
  }

 private:
  Result<Outcome> compute() const override {
    WrenchQuestion question;
    CW_TRY(aim, m_torque->stated());
    question.aim = aim;
    CW_CHECK(readTolerance(question));
    CW_TRY(graduation, m_graduation->stated());
    question.graduation = graduation;
    CW_TRY(lever, m_lever.leverIfAny());
    question.lever = lever;
    CW_TRY(deviation, deviationIn(*m_deviation));
    question.deviation = deviation;
    CW_CHECK(readPrevailing(question));
    // Only as long as the torque that was carried here still stands.
    if (toQt(text(aim)) == desk().valueOf(QStringLiteral("insteadOfAim")))
      question.insteadOf = fromQt(desk().valueOf(QStringLiteral("insteadOf")));
    CW_TRY(known, subject());
    if (known) question.fastener = *known;
    return wrenchFor(question, known && known->grade).map_error([](Error error) {
      if (error.place.empty()) error.place = "graduation";  // no mark inside the tolerance
      return error;
    });
  }
  Result<void> readTolerance(WrenchQuestion& question) const {
    if (m_tolerance->empty()) return {};
    CW_TRY(band, parseTolerance(m_tolerance->text(), question.aim, m_tolerance->numberMark()));
    question.tolerance = band;
    return {};
  }
  Result<void> readPrevailing(WrenchQuestion& question) const {
    CW_TRY(prevailing, m_prevailing->statedIfAny());
    if (!prevailing) return {};
    question.prevailing = prevailing->value();
    for (const PrevailingRule rule : kRules)
      if (toQt(m_rule->text()) == ruleName(rule)) {
        question.rule = rule;
        return {};
      }
    return fail(ErrorCode::InvalidInput, "rule", "", "the sheet says whether prevailing torque is added",
                "write always add, add from one third or none");
  }
  Result<std::optional<GuardSubject>> subject() const override {
    if (m_form.thread->empty()) return std::optional<GuardSubject>();
    return m_form.subject().map([](const GuardSubject& found) { return std::optional(found); });
  }

  TextField *m_tolerance, *m_deviation;
  TorqueField *m_graduation, *m_prevailing;
  LeverForm m_lever;
  NameField* m_rule;
  FastenerForm m_form{desk()};
};

class AppliedPage final : public FigurePage {
 public:
  explicit AppliedPage(FigureDesk& desk)
      : FigurePage(
            desk, WrenchTexts::tr("Torque behind a setting"),
            WrenchTexts::tr("What reached the fastener when the wrench clicked, back through the adapter.")) {
    m_setting = add(new TorqueField(
        {QStringLiteral("setting"), WrenchTexts::tr("The wrench was set to"), WrenchTexts::tr("17 ft·lbf")}));
    m_lever.length = add(LeverForm::lengthField(false));
    m_lever.offset = add(LeverForm::offsetField(false));
    m_lever.angle = add(LeverForm::angleField());
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(setting, m_setting->stated());
    CW_TRY(lever, m_lever.lever());
    return torqueBehind(setting, lever);
  }

  TorqueField* m_setting;
  LeverForm m_lever;
};

}  // namespace

QWidget* makeSettingPage(FigureDesk& desk, QWidget*) {
  return new SettingPage(desk);
}
QWidget* makeAppliedPage(FigureDesk& desk, QWidget*) {
  return new AppliedPage(desk);
}

}  // namespace cw
