#include "app/command_line/demo_shop.h"

#include <sstream>

#include "app/command_line/job_enter.h"
#include "core/base/resource.h"
#include "core/record/key.h"
#include "core/store/file_io.h"
#include "core/store/found_shop.h"
#include "core/store/register_file.h"
#include "core/store/sheet_review.h"

namespace cw {
namespace {

struct Script {
  const char* name;
  const char* workOrder;
  const char* machine;
  const char* hours;
  const char* starts;
};

constexpr Script kScripts[] = {{"pump_cover", "WO 4471", "P-12", "412 h", "2026-11-23T08:05:00+01:00"},
                               {"discharge_flange", "WO 4475", "P-15", "88 h", "2026-11-24T13:20:00+01:00"}};

std::string demoFile(const std::string& name) {
  return std::string(resource("demo/" + name));
}

/// Every demo sheet, written by the trainer and issued by the lead.
Result<void> issueSheets(Shop& shop, Clock& clock) {
  for (const std::string_view path : resourcesBelow("demo/sheets/")) {
    const Deed author{"ines", clock.now()}, approver{"bea", clock.now()};
    CW_TRY(row, shop.sheets().saveDraft(resource(path), author));
    CW_CHECK(shop.sheets().submit(row.sheet, row.revision, author));
    CW_CHECK(issueReviewed(shop, row.sheet, row.revision, approver));
  }
  return {};
}

Result<DemoJob> play(Shop& shop, const Script& script, SteppingClock& clock, const SecretKey& key) {
  CW_TRY(starts, parseRfc3339(script.starts));
  clock.set(starts);
  Beginning beginning;
  beginning.job = Id::make(clock.now());
  beginning.entry = Id::make(clock.now());
  beginning.sheetDigest = hex(sha256(demoFile("sheets/" + std::string(script.name) + ".json")));
  beginning.by = "mira";
  beginning.pin = "2468";
  beginning.start.workOrder = script.workOrder;
  beginning.start.machine = script.machine;
  beginning.start.hours = script.hours;
  CW_CHECK(shop.ledger().start(beginning));
  std::istringstream lines(demoFile(std::string(script.name) + ".jsonl"));
  std::ostringstream receipts;
  if (auto entered = enterLines(shop, beginning.job, lines, receipts); !entered)
    return fail(within(script.name, entered.error()));
  CW_TRY(record, shop.records().seal(beginning.job, {"mira", "2468"}, key, CW_VERSION));
  return DemoJob{beginning.job, script.name, record};
}

}  // namespace

Result<DemoShop> playDemo(const std::string& folder, Existing existing) {
  SteppingClock clock(*parseRfc3339("2026-11-20T09:00:00+01:00"), std::chrono::seconds(7));
  const std::string file = folder + "/demo.shop", keyFile = usualKeyFile(file).string();
  CW_TRY(shop, foundShop(file, "Invented irrigation co-operative, pump shed", keyFile, clock));
  CW_TRY(keyText, readFile(keyFile));
  CW_TRY(key, readSecretKey(keyText));
  CW_CHECK(writeFile(folder + "/key.json", writePublicKey(publicOf(key)), existing));
  CW_CHECK(addRegister(*shop, demoFile("register.json"), {"bea", clock.now(), "invented data"},
                       PinStrength::Quick));
  CW_CHECK(issueSheets(*shop, clock));
  DemoShop out{key, {}};
  for (const Script& script : kScripts) {
    CW_TRY(job, play(*shop, script, clock, key));
    out.jobs.push_back(std::move(job));
  }
  return out;
}

}  // namespace cw
