#pragma once
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/store/shop.h"
#include "tests/support/need.h"
#include "tests/support/sample_job.h"
#include "tests/support/temporary_folder.h"

namespace cw::test {

inline constexpr std::string_view kPin = "2468";

/// The sample's people and the sheet's author, all with the same PIN.
inline std::vector<Person> shopPeople() {
  static const std::string hash = *hashPin(kPin, PinStrength::Quick);
  std::vector<Person> out = samplePeople();
  out.push_back({"tilda", "Tilda Ros", {Role::Trainer}, false, true, ""});
  for (Person& person : out) person.pinHash = hash;
  return out;
}

/// What is said in the sample job from its start to its end, after the start itself.
inline std::vector<std::pair<std::string, Body>> sampleScript(const std::string& lastStep = "") {
  Bench bench;
  bench.workThrough(lastStep);
  std::vector<std::pair<std::string, Body>> out;
  for (std::size_t i = 1; i < bench.job().entries.size(); ++i) {
    const Entry& entry = bench.job().entries[i].entry;
    out.emplace_back(entry.enteredBy, entry.body);
  }
  return out;
}

/// A real shop file with people, tools, a machine and the sample sheet issued, and a clock that a test moves.
class SampleShop {
 public:
  explicit SampleShop(const Sheet& sheet = sampleSheet()) : SampleShop(kPatience, sheet) {}
  explicit SampleShop(std::chrono::milliseconds patience, const Sheet& sheet = sampleSheet())
      : m_key(makeKey()),
        m_clock(*parseRfc3339("2026-03-04T08:00:00.000+01:00"), std::chrono::seconds(1)),
        m_settings{patience, std::chrono::minutes(15)},
        m_shop(need(Shop::create(file(), "Test shop", publicOf(m_key), m_clock, m_settings))) {
    fillRegisters(*m_shop, m_clock.now(), sheet);
  }

  static void fillRegisters(Shop& shop, const Moment& now, const Sheet& sheet = sampleSheet()) {
    for (const Person& person : shopPeople()) need(shop.people().add(person));
    for (const TorqueTool& tool : sampleTools()) need(shop.tools().add(tool, {"lena", now}));
    need(shop.machines().add({"P-1", "Test pump", "S-100", "412 h"}));
    const SheetRow row = need(shop.sheets().saveDraft(writeSheet(sheet), {"tilda", now}));
    need(shop.sheets().submit(row.sheet, row.revision, {"tilda", now}));
    need(shop.sheets().issue(row.sheet, row.revision, {"lena", now}));
  }

  std::filesystem::path file() const { return m_folder / "shop.clampwright"; }
  const TemporaryFolder& folder() const { return m_folder; }
  Shop& operator*() { return *m_shop; }
  Shop* operator->() { return m_shop.get(); }
  SteppingClock& clock() { return m_clock; }
  const SecretKey& key() const { return m_key; }
  Id newId() { return Id::make(m_clock.now()); }

  /// Another program that has the same file open.
  std::unique_ptr<Shop> another() { return need(Shop::open(file(), m_clock, m_settings)); }
  /// The program ends and is started again.
  void reopen() {
    m_shop.reset();
    m_shop = another();
  }
  void close() { m_shop.reset(); }

  Beginning beginning() {
    Beginning out;
    out.job = newId();
    out.entry = newId();
    out.sheetDigest = hex(sha256(writeSheet(sampleSheet())));
    out.by = "mira";
    out.pin = kPin;
    out.start.workOrder = "WO 1";
    out.start.machine = "P-1";
    return out;
  }
  Id startJob() {
    const Beginning begin = beginning();
    need(m_shop->ledger().start(begin));
    return begin.job;
  }

  Draft draft(const std::string& sign, Body body) {
    Draft out;
    out.id = newId();
    out.enteredBy = sign;
    out.body = std::move(body);
    return out;
  }
  /// What `sign` says, with the PIN where a PIN is asked for.
  Result<Receipt> say(const Id& job, const std::string& sign, Body body) {
    const bool signsIn = std::holds_alternative<SignedIn>(body);
    return m_shop->ledger().append(job, draft(sign, std::move(body)),
                                   signsIn ? Pins{{sign, std::string(kPin)}} : Pins{});
  }
  /// The sample job up to and including a step; "" to its end. Empty if all was taken.
  std::string work(const Id& job, const std::string& lastStep = "") {
    for (const auto& [sign, body] : sampleScript(lastStep))
      if (const auto said = say(job, sign, body); !said) return sentence(said.error());
    return {};
  }

 private:
  TemporaryFolder m_folder;
  SecretKey m_key;
  SteppingClock m_clock;
  ShopSettings m_settings;
  std::unique_ptr<Shop> m_shop;
};

}  // namespace cw::test
