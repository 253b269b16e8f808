#include "app/figures/from_specification.h"

#include "app/common/wording.h"
#include "core/units/format.h"
#include "core/units/parse.h"

namespace cw {
namespace {

template <class Tag>
QString statedText(const std::optional<Stated<Tag>>& stated) {
  return stated ? toQt(text(*stated)) : QString();
}

/// A maximum without an aim is not aimed at, but it is the torque to judge.
QString torqueOf(const Specification& specification) {
  return statedText(specification.aim ? specification.aim : specification.high);
}

QString toleranceText(const Specification& specification) {
  if (!specification.low || !specification.high || !specification.aim) return {};
  return QStringLiteral("%1 to %2").arg(statedText(specification.low), statedText(specification.high));
}

/// The manual's other column, where it reads as one torque.
QString secondColumn(const Specification& specification) {
  const auto second = parse<TorqueTag>(specification.printedSecond);
  return second ? toQt(text(*second)) : QString();
}

}  // namespace

std::map<QString, QString> inputsFrom(const Specification& specification, const Fastener& fastener) {
  const QString torque = torqueOf(specification), condition = toQt(specification.condition);
  return {{QStringLiteral("thread"), toQt(fastener.thread)},
          {QStringLiteral("grade"), toQt(fastener.grade)},
          {QStringLiteral("torque"), torque},
          {QStringLiteral("aim"), torque},
          {QStringLiteral("second"), secondColumn(specification)},
          {QStringLiteral("tolerance"), toleranceText(specification)},
          {QStringLiteral("condition"), condition},
          {QStringLiteral("aimCondition"), condition},
          {QStringLiteral("inUse"), QString()},
          {QStringLiteral("insteadOf"), QString()},
          {QStringLiteral("insteadOfAim"), QString()},
          {QStringLiteral("face"), QString()},
          {QStringLiteral("material"), toQt(fastener.tapped)},
          {QStringLiteral("engagement"), statedText(fastener.engagement)},
          {QStringLiteral("depth"), statedText(fastener.depth)}};
}

}  // namespace cw
