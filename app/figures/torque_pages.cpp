#include "app/figures/torque_pages.h"

#include <QCoreApplication>

#include "app/fields/text_field.h"
#include "app/figures/fastener_form.h"
#include "core/joint/clamp_target.h"
#include "core/report/figures.h"

namespace cw {
namespace {

class PageTexts {
  Q_DECLARE_TR_FUNCTIONS(FigurePages)
};

TorqueField* torqueField(const char* name, const QString& label, bool optional = false) {
  return new TorqueField(
      {QLatin1String(name), label, PageTexts::tr("30 N·m, 22 ft·lbf, 60 in·lbf"), optional});
}

LengthField* engagementField() {
  return new LengthField(
      {QStringLiteral("engagement"), PageTexts::tr("Full thread engaged"), PageTexts::tr("12 mm"), true});
}

/// Nothing while no thread stands there.
Result<std::optional<GuardSubject>> subjectOf(const FastenerForm& form) {
  if (form.thread->empty()) return std::optional<GuardSubject>();
  return form.subject().map([](const GuardSubject& found) { return std::optional(found); });
}

class ConvertPage final : public FastenerPage {
 public:
  explicit ConvertPage(FigureDesk& desk)
      : FastenerPage(
            desk, PageTexts::tr("Convert"),
            PageTexts::tr("One torque in every unit, by exact factors. With thread and grade the guard says "
                          "whether it makes sense.")) {
    m_torque = add(torqueField("torque", PageTexts::tr("Torque as stated")));
    m_form.thread = add(threadField(desk, true));
    m_form.grade = add(gradeField(desk, true));
    m_form.condition = add(conditionField(desk, "condition", PageTexts::tr("Condition it is stated for"),
                                          ConditionOf::Specification, true));
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(torque, m_torque->stated());
    return convertedTorque(torque);
  }
  Result<std::optional<GuardSubject>> subject() const override { return subjectOf(m_form); }

  FastenerForm m_form{desk()};
};

class GuardPage final : public FastenerPage {
 public:
  explicit GuardPage(FigureDesk& desk)
      : FastenerPage(
            desk, PageTexts::tr("Judge a torque"),
            PageTexts::tr(
                "Does the value make sense for its fastener, and do the manual's two columns agree?")) {
    m_torque = add(torqueField("torque", PageTexts::tr("Torque as stated")));
    m_second = add(torqueField("second", PageTexts::tr("Second printed column"), true));
    m_form.thread = add(threadField(desk));
    m_form.grade = add(gradeField(desk, true));
    m_form.condition = add(conditionField(desk, "condition", PageTexts::tr("Condition it is stated for"),
                                          ConditionOf::Specification, true));
    m_form.face = add(faceField(desk));
    m_form.material = add(materialField(desk, true));
    m_form.engagement = add(engagementField());
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(torque, m_torque->stated());
    CW_TRY(second, m_second->statedIfAny());
    CW_TRY(subject, m_form.subject());
    return guardedTorque(torque, second, subject);
  }
  Result<std::optional<GuardSubject>> subject() const override { return subjectOf(m_form); }

  void remarkInputs() override {}  // the answer says it

  TorqueField* m_second;
  FastenerForm m_form{desk()};
};

/// What ties torque and clamp load together.
class ClampingPage : public FastenerPage {
 protected:
  using FastenerPage::FastenerPage;

  void addCase() {
    m_form.thread = add(threadField(desk()));
    m_form.grade = add(gradeField(desk(), true));
    m_form.condition = add(conditionField(
        desk(), "condition", PageTexts::tr("Condition of threads and faces"), ConditionOf::Specification));
    m_form.face = add(faceField(desk()));
    m_basis = add(basisField());
    m_deviation = add(deviationField(false));
  }
  Result<ClampCase> clampCase() const {
    CW_TRY(subject, m_form.subject());
    CW_TRY(deviation, deviationIn(*m_deviation));
    return ClampCase{subject, basisIn(*m_basis), deviation.value_or(0)};
  }
  Result<std::optional<GuardSubject>> subject() const override { return subjectOf(m_form); }

  FastenerForm m_form{desk()};
  NameField* m_basis = nullptr;
  TextField* m_deviation = nullptr;
};

class ClampPage final : public ClampingPage {
 public:
  explicit ClampPage(FigureDesk& desk)
      : ClampingPage(
            desk, PageTexts::tr("Clamp load from a torque"),
            PageTexts::tr(
                "What the torque leaves in the fastener, and how far friction and the tool spread it.")) {
    m_torque = add(torqueField("torque", PageTexts::tr("Torque as stated")));
    addCase();
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(torque, m_torque->stated());
    CW_TRY(clamp, clampCase());
    return clampLoadOf(torque, clamp);
  }
};

class TorquePage final : public ClampingPage {
 public:
  explicit TorquePage(FigureDesk& desk)
      : ClampingPage(
            desk, PageTexts::tr("Torque for a clamp load"),
            PageTexts::tr(
                "What the wrench has to bring for a clamp load or a share of the bolt's strength.")) {
    m_load = add(new TextField(
        {QStringLiteral("load"), PageTexts::tr("Clamp load"), PageTexts::tr("17 kN, 75 % of proof")},
        [](const std::string& text, DecimalMark mark) -> Result<void> {
          if (text.find('%') != std::string::npos) return {};
          CW_CHECK(writtenClampLoad(text, {}, std::nullopt, mark));
          return {};
        }));
    addCase();
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(clamp, clampCase());
    const FastenerCase& fastener = clamp.fastener;
    CW_TRY(load, writtenClampLoad(m_load->text(), fastener.thread, fastener.grade, m_load->numberMark()));
    const auto* last = unitWithCode<TorqueTag>(fromQt(Settings().figureUnit(QStringLiteral("torque"))));
    return torqueForLoad(load, last != nullptr ? *last : kNewtonMetre, clamp);
  }

  TextField* m_load;
};

class ConditionPage final : public FastenerPage {
 public:
  explicit ConditionPage(FigureDesk& desk)
      : FastenerPage(desk, PageTexts::tr("Change of condition"),
                     PageTexts::tr("The manual's torque holds for one state of threads and faces; these "
                                   "parts are in another.")) {
    m_torque = add(torqueField("torque", PageTexts::tr("Torque as specified")));
    m_form.condition = add(conditionField(desk, "condition", PageTexts::tr("Condition it is specified for"),
                                          ConditionOf::Specification));
    m_inUse =
        add(conditionField(desk, "inUse", PageTexts::tr("Condition the parts are in"), ConditionOf::Parts));
    m_form.thread = add(threadField(desk));
    m_form.grade = add(gradeField(desk, true));
    m_form.face = add(faceField(desk));
    m_basis = add(basisField());
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(torque, m_torque->stated());
    CW_TRY(fastener, m_form.subject());
    CW_TRY(inUse, conditionIn(desk(), *m_inUse));
    if (!inUse)
      return fail(ErrorCode::InvalidInput, "inUse", m_inUse->text(),
                  "the condition of the parts is what you see", "look, and name it");
    return changedCondition(torque, *inUse, fastener, basisIn(*m_basis)).map_error([](Error error) {
      if (error.code == ErrorCode::OutOfTurn) error.place = "inUse";  // the same as specified
      return error;
    });
  }
  Result<std::optional<GuardSubject>> subject() const override { return subjectOf(m_form); }

  FastenerForm m_form{desk()};
  NameField *m_inUse, *m_basis;
};

}  // namespace

QWidget* makeConvertPage(FigureDesk& desk, QWidget*) {
  return new ConvertPage(desk);
}
QWidget* makeGuardPage(FigureDesk& desk, QWidget*) {
  return new GuardPage(desk);
}
QWidget* makeClampPage(FigureDesk& desk, QWidget*) {
  return new ClampPage(desk);
}
QWidget* makeTorquePage(FigureDesk& desk, QWidget*) {
  return new TorquePage(desk);
}
QWidget* makeConditionPage(FigureDesk& desk, QWidget*) {
  return new ConditionPage(desk);
}

}  // namespace cw
