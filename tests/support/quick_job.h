#pragma once
#include "core/record/next.h"
#include "tests/support/quick_joint.h"
#include "tests/support/sample_shop.h"

namespace cw::test {

/// A wrench that the quick joint can be tightened with.
inline void addQuickWrench(SampleShop& shop) {
  TorqueTool wrench = sampleTools().front();
  wrench.id = "T-20";
  wrench.scales = {{StatedTorque{"5", &kNewtonMetre}, StatedTorque{"50", &kNewtonMetre},
                    StatedTorque{"0.5", &kNewtonMetre}}};
  need(shop->tools().add(wrench, {"lena", shop.clock().now()}));
}

inline Beginning quickBeginning(SampleShop& shop, const std::string& sign = "mira",
                                const QuickJoint& joint = quickCover()) {
  Beginning out = shop.beginning();
  out.by = sign;
  out.quickSheet = writeSheet(quickSheetOf(joint));
  return out;
}

/// Started, tightened, finished and sealed. Needs the wrench.
inline Id sealedQuickJoint(SampleShop& shop) {
  const Beginning begin = quickBeginning(shop);
  const Id& job = begin.job;
  need(shop->ledger().start(begin));
  const auto say = [&](Body body) { need(shop.say(job, "mira", std::move(body))); };
  const auto setTo = [](const char* digits) {
    ToolSet set;
    set.tool = "T-20";
    set.setting = {digits, &kNewtonMetre};
    return set;
  };
  say(HandStarted{"", 6, {}});
  say(ConditionConfirmed{"", "oiled"});
  say(setTo("10.5"));
  say(counted("", 6));
  say(setTo("21"));
  for (int position = 0; position < 6; ++position) {
    Tightened pulled;
    pulled.position = next(*need(shop->ledger().job(job))).position;
    say(pulled);
  }
  say(Finished{});
  need(shop->records().seal(job, {"mira", std::string(kPin)}, shop.key(), "test"));
  return job;
}

}  // namespace cw::test
