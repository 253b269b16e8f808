#include "app/figures/thread_pages.h"

#include <QCoreApplication>

#include "app/figures/fastener_form.h"
#include "core/report/figures.h"

namespace cw {
namespace {

using ForceField = QuantityField<ForceTag>;

class ThreadTexts {
  Q_DECLARE_TR_FUNCTIONS(ThreadPages)
};

LengthField* lengthField(const char* name, const QString& label, const QString& example,
                         bool optional = false) {
  return new LengthField({QLatin1String(name), label, example, optional});
}

class StrippingPage final : public FigurePage {
 public:
  explicit StrippingPage(FigureDesk& desk)
      : FigurePage(
            desk, ThreadTexts::tr("Stripping and engagement"),
            ThreadTexts::tr(
                "Which gives way first in a tapped hole, and how much thread lets the bolt break first.")) {
    m_thread = add(threadField(desk));
    m_grade = add(gradeField(desk));
    m_material = add(materialField(desk));
    m_engagement =
        add(lengthField("engagement", ThreadTexts::tr("Full thread engaged"), ThreadTexts::tr("12 mm")));
    m_depth =
        add(lengthField("depth", ThreadTexts::tr("Full thread in the hole"), ThreadTexts::tr("16 mm"), true));
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(thread, threadIn(desk(), *m_thread));
    CW_TRY(grade, gradeIn(desk(), *m_grade, thread));
    CW_TRY(material, materialIn(desk(), *m_material));
    CW_TRY(engagement, m_engagement->stated());
    CW_TRY(depth, m_depth->statedIfAny());
    TappedHole hole{*material, engagement.value()};
    if (depth) hole.threadLength = depth->value();
    return strippingOf(thread, *grade, hole);
  }

  NameField *m_thread, *m_grade, *m_material;
  LengthField *m_engagement, *m_depth;
};

NameField* membersField() {
  std::vector<NameField::Choice> choices;
  for (const MemberMaterial& material : memberMaterials()) choices.push_back({toQt(material.name), {}});
  return new NameField(
      {QStringLiteral("members"), ThreadTexts::tr("Material of the clamped parts"),
       ThreadTexts::tr("steel, grey iron, aluminium, copper")},
      choices, [](const std::string& text, DecimalMark) {
        return memberMaterial(text).map([](const MemberMaterial& row) { return toQt(row.name); });
      });
}

class AnglePage final : public FigurePage {
 public:
  explicit AnglePage(FigureDesk& desk)
      : FigurePage(desk, ThreadTexts::tr("Angle after snug"),
                   ThreadTexts::tr(
                       "How far a steel bolt turns from snug to its clamp load, while all stays elastic.")) {
    m_thread = add(threadField(desk));
    m_load = add(new ForceField(
        {QStringLiteral("angleLoad"), ThreadTexts::tr("Clamp load wanted"), ThreadTexts::tr("17 kN")}));
    m_snug = add(new ForceField(
        {QStringLiteral("snug"), ThreadTexts::tr("Clamp load when snug"), ThreadTexts::tr("3 kN")}));
    m_plain =
        add(lengthField("plain", ThreadTexts::tr("Plain shank within the grip"), ThreadTexts::tr("20 mm")));
    m_threaded =
        add(lengthField("threaded", ThreadTexts::tr("Thread within the grip"), ThreadTexts::tr("10 mm")));
    m_members = add(membersField());
  }

 private:
  Result<Outcome> compute() const override {
    CW_TRY(thread, threadIn(desk(), *m_thread));
    CW_TRY(load, m_load->stated());
    CW_TRY(snug, m_snug->stated());
    CW_TRY(plain, m_plain->stated());
    CW_TRY(threaded, m_threaded->stated());
    CW_TRY(members, memberMaterial(m_members->text()));
    return angleFromSnug({thread, load.value(), snug.value(), plain.value(), threaded.value(), members});
  }

  NameField *m_thread, *m_members;
  ForceField *m_load, *m_snug;
  LengthField *m_plain, *m_threaded;
};

}  // namespace

QWidget* makeStrippingPage(FigureDesk& desk, QWidget*) {
  return new StrippingPage(desk);
}
QWidget* makeAnglePage(FigureDesk& desk, QWidget*) {
  return new AnglePage(desk);
}

}  // namespace cw
