#pragma once
#include <gtest/gtest.h>

#include <sodium.h>

#include "core/pattern/order.h"
#include "core/report/content.h"
#include "tests/support/sample_job.h"

namespace cw::test {

/// A bench whose job says what was expected of each line; the first refusal is kept for the test to show.
class Script {
 public:
  explicit Script(Sheet sheet = sampleSheet()) : m_bench(std::move(sheet)) { keep(m_bench.start()); }

  /// Sequence of the entry that this became.
  int say(Body body, const std::string& sign = "mira") {
    keep(m_bench.say(sign, std::move(body)));
    return m_bench.job().count();
  }
  int tighten(const std::string& step, const std::string& position, const std::string& read = "") {
    return say(read.empty() ? clicked(step, position) : test::read(step, position, inLbf(read)));
  }
  /// Says that the tightening entry `of` had read otherwise.
  int correctReading(int of, const std::string& read, const std::string& reason) {
    return say(correction(of, "reading", toJson(inLbf(read)), reason));
  }
  void wait(std::chrono::seconds time) {
    Moment now = m_bench.clock().now();
    now.utc += time;
    m_bench.clock().set(now);
  }

  Bench& bench() { return m_bench; }
  const std::string& refusal() const { return m_refusal; }  ///< empty: everything was allowed

 private:
  void keep(const Result<void>& said) {
    if (!said && m_refusal.empty()) m_refusal = sentence(said.error());
  }
  Bench m_bench;
  std::string m_refusal;
};

/// Numbers of the entries that a test wants to find again.
struct EventfulEntries {
  int outside = 0, wrong = 0, correction = 0, override = 0, disagreement = 0, deviation = 0, apart = 0;
};

/// A job in which nearly everything that a record sets first has happened. Invented.
inline Script eventfulJob(EventfulEntries& entries) {
  Script job;
  job.say(WarningsRead{"s1"});
  job.say(SetAside{"s1", "the new gasket comes at noon"});
  job.say(CheckMade{"s2", Answer::No, "oil on the face"});
  job.say(CheckMade{"s2", Answer::Yes, "wiped clean"});
  job.say(Measured{"s3", "0.15", "mm", ""});
  job.say(Measured{"s3", "0.05", "mm", "F-2"});
  job.say(Applied{"s4", "B-77", "2026-12-31"});
  job.say(HandStarted{"s5", 3, {"4"}});
  job.say(SignedIn{}, "lena");
  job.say(Repaired{"cover", "4", "thread chased", "burr at the first turn", {}}, "lena");
  job.say(HandStarted{"s5", 4, {}});
  job.say(ConditionConfirmed{"s5", "dry"});
  job.say(toolSet("s5", "T-07", inLbf("33")));
  job.say(counted("s5", 4));
  entries.override =
      job.say(allowedTool(toolSet("s5", "T-08", inLbf("65")), "lena", "the other wrench is away"));
  job.say(SignedIn{}, "otto");
  const auto witnessed = [](const char* tool) { return settingSeen(tool, inLbf("65")); };
  entries.disagreement = job.say(witnessed("T-07"), "otto");
  job.say(witnessed("T-08"), "otto");
  entries.outside = job.tighten("s5", "1", "75");
  job.wait(std::chrono::seconds(20));
  job.tighten("s5", "1", "66");
  entries.wrong = job.tighten("s5", "3", "64");
  entries.correction = job.correctReading(entries.wrong, "67", "read the wrong scale");
  job.wait(std::chrono::seconds(20));
  job.tighten("s5", "2");
  job.say(Paused{"telephone", false, "", ""});
  job.say(SignedIn{});
  job.say(Resumed{false});
  job.tighten("s5", "4");
  job.say(checkPass("s5", {"2"}));
  job.say(checkPass("s5", {}));
  entries.apart = job.say(TakenApart{"s5", "a drip at position 2"});
  job.say(HandStarted{"s5", 4, {}});
  job.say(ConditionConfirmed{"s5", "dry"});
  job.say(toolSet("s5", "T-07", inLbf("33")));
  job.say(counted("s5", 4));
  job.say(toolSet("s5", "T-07", inLbf("65")));
  job.say(SignedIn{}, "otto");
  job.say(witnessed("T-07"), "otto");
  for (const char* position : {"1", "3", "2", "4"}) {
    job.wait(std::chrono::seconds(15));
    job.tighten("s5", position);
  }
  job.say(checkPass("s5", {}));
  job.say(SignedIn{}, "lena");
  entries.deviation =
      job.say(Deviated{"s6", "marks not painted", "no paint in the shop", "lena", {}, {}, {}});
  job.say(ActDone{"s1", true, "", ""});
  job.say(Finished{"=all well", "lena", "the marks can be painted later"});
  return job;
}

/// A ring of `count` bolts, tightened without trouble. Invented.
inline Script ringJob(std::size_t count) {
  Sheet sheet = sampleSheet();
  Joint& joint = sheet.joints.front();
  joint.name = "Ring of " + std::to_string(count);
  joint.layout.shape = Circle{count, millimetres(600), {}, 1, Direction::Clockwise};
  joint.layout.outline = RoundOutline{millimetres(680)};
  joint.order.clear();
  const auto order = tighteningOrder(joint.layout, OrderRule::Star);
  for (const std::size_t position : order->positions) joint.order.push_back(std::to_string(position));
  Script job(sheet);
  const int all = static_cast<int>(count);
  job.say(WarningsRead{"s1"});
  job.say(ActDone{"s1", true, "", ""});
  job.say(CheckMade{"s2", Answer::Yes, ""});
  job.say(Measured{"s3", "0.05", "mm", ""});
  job.say(Applied{"s4", "B-77", "2026-12-31"});
  job.say(HandStarted{"s5", all, {}});
  job.say(ConditionConfirmed{"s5", "dry"});
  job.say(toolSet("s5", "T-07", inLbf("33")));
  job.say(counted("s5", all));
  job.say(toolSet("s5", "T-07", inLbf("65")));
  job.say(SignedIn{}, "otto");
  job.say(settingSeen("T-07", inLbf("65")), "otto");
  for (const std::string& position : joint.order) {
    job.wait(std::chrono::seconds(12));
    job.tighten("s5", position, std::stoi(position) % 3 == 0 ? "66" : "");
  }
  job.say(checkPass("s5", {}));
  job.say(marksSeen(), "otto");
  job.say(Finished{});
  return job;
}

/// A key that is the same in every run.
inline SecretKey steadyKey() {
  SecretKey key;
  PublicKey unused;
  const std::array<unsigned char, 32> seed{1, 2, 3};
  crypto_sign_seed_keypair(unused.bytes.data(), key.bytes.data(), seed.data());
  return key;
}

inline std::string sealedBytes(Script& job) {
  const auto bytes = sealRecord(job.bench().job(), job.bench().context(), steadyKey());
  return bytes ? *bytes : sentence(bytes.error());
}

/// The content of an eventful job's sealed record.
inline RecordContent eventfulContent() {
  EventfulEntries entries;
  Script job = eventfulJob(entries);
  EXPECT_EQ(job.refusal(), "");
  return contentOf(*readRecord(sealedBytes(job)), {}, plain);
}

}  // namespace cw::test
