#include <QCoreApplication>

#include "app/figures/figure.h"
#include "app/figures/order_page.h"
#include "app/figures/settling_page.h"
#include "app/figures/thread_pages.h"
#include "app/figures/torque_pages.h"
#include "app/figures/wrench_pages.h"

namespace cw {

const std::vector<Figure>& figures() {
  static const std::vector<Figure> kFigures{
      {QStringLiteral("convert"), QT_TRANSLATE_NOOP("figures", "Convert"), makeConvertPage},
      {QStringLiteral("guard"), QT_TRANSLATE_NOOP("figures", "Judge a torque"), makeGuardPage},
      {QStringLiteral("condition"), QT_TRANSLATE_NOOP("figures", "Change of condition"), makeConditionPage},
      {QStringLiteral("setting"), QT_TRANSLATE_NOOP("figures", "Wrench setting"), makeSettingPage},
      {QStringLiteral("applied"), QT_TRANSLATE_NOOP("figures", "Torque behind a setting"), makeAppliedPage},
      {QStringLiteral("clamp"), QT_TRANSLATE_NOOP("figures", "Clamp load from a torque"), makeClampPage},
      {QStringLiteral("torque"), QT_TRANSLATE_NOOP("figures", "Torque for a clamp load"), makeTorquePage},
      {QStringLiteral("stripping"), QT_TRANSLATE_NOOP("figures", "Stripping and engagement"),
       makeStrippingPage},
      {QStringLiteral("angle"), QT_TRANSLATE_NOOP("figures", "Angle after snug"), makeAnglePage},
      {QStringLiteral("order"), QT_TRANSLATE_NOOP("figures", "Order"), makeOrderPage},
      {QStringLiteral("settling"), QT_TRANSLATE_NOOP("figures", "Orders compared"), makeSettlingPage},
  };
  return kFigures;
}

}  // namespace cw
