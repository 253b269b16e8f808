// `job enter` is killed while it enters a file, again and again, and each time given the same file anew.
#include <fmt/format.h>

#include <fstream>
#include <iostream>
#include <sstream>

#include "core/record/body_fields.h"
#include "core/store/inspect.h"
#include "tests/kill/child.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

using test::Child;
using test::need;
using test::SampleShop;
using test::Unsynced;

/// The fields that somebody states.
class Stated {
 public:
  template <class T>
  void operator()(std::string_view, const Derived<T>&) {}
  template <class T>
  void operator()(std::string_view, const AsAtUse<T>&) {}
  template <class T>
  void operator()(std::string_view key, const T& field) {
    m_writer(key, field);
  }
  Json take() { return m_writer.take(); }

 private:
  FieldWriter m_writer;
};

std::string enterLine(const std::string& sign, const Body& body) {
  Stated stated;
  std::visit([&]<class T>(const T& b) { T::fields(b, stated); }, body);
  Json line = stated.take();
  line.set("kind", kindOf(body)).set("by", sign);
  if (std::holds_alternative<SignedIn>(body)) line.set("pin", test::kPin);
  return canonical(line);
}

/// Two sign-ins, then the sample job up to its tighten step and taken apart, over and over. No entry of it
/// can be left out or said twice without one being refused, so that a wrong place to go on from shows.
std::vector<std::pair<std::string, Body>> script(int rounds) {
  auto round = test::sampleScript("s5");
  std::erase_if(round, [](const auto& said) { return std::holds_alternative<SignedIn>(said.second); });
  for (auto& [sign, body] : round)
    if (auto* applied = std::get_if<Applied>(&body))
      applied->expiry.clear();  // the child's clock is the real one
  round.emplace_back("mira", TakenApart{"s1", "once more"});
  std::vector<std::pair<std::string, Body>> out{{"mira", SignedIn{}}, {"otto", SignedIn{}}};
  for (int i = 0; i < rounds; ++i) out.insert(out.end(), round.begin(), round.end());
  return out;
}

constexpr std::size_t kSignIns = 2;
constexpr int kRounds = 40;

struct Counts {
  int killed = 0;
  int acknowledged = 0;
  int lost = 0;
};

/// One shop file with a job, and the file that is entered into it.
class Victim {
 public:
  explicit Victim(Unsynced unsynced) : m_unsynced(unsynced), m_script(script(kRounds)) {
    const Moment now = SystemClock().now();
    m_shop.clock().set({now.utc - std::chrono::hours(1), now.offset});
    Calibration lasting = *test::sampleTools().front().lastCalibration();
    lasting.due = *parseDate("9999-12-31");
    need(m_shop->tools().calibrate("T-07", lasting, {"lena", now}));
    m_job = m_shop.startJob();
    m_shop.close();
    std::ofstream lines(linesFile());
    for (const auto& [sign, body] : m_script) lines << enterLine(sign, body) << "\n";
  }

  /// Enters the file until the child dies: at the crashAt-th write or sync that its new entries cause, or,
  /// with 0, killed from outside once so many of them are acknowledged.
  void run(int crashAt, int newLines, unsigned seed, Counts& counts) {
    Child child(CW_CRASHING_COMMAND_LINE,
                {std::to_string(static_cast<int>(m_unsynced)), std::to_string(kSignIns),
                 std::to_string(crashAt), std::to_string(seed % 1'000'000), "--shop", m_shop.file().string(),
                 "job", "enter", linesFile().string(), "--job", m_job.text()});
    int fresh = 0;
    if (crashAt == 0 && newLines == 0) child.kill();
    for (std::size_t index = 0; const auto line = child.line(); ++index) {
      fresh += take(index, *line);
      if (crashAt == 0 && fresh == newLines) child.kill();
    }
    counts.killed += child.wait() ? 1 : 0;
    counts.acknowledged += fresh;
  }

  /// What the next program finds: the file opens, nothing acknowledged is missing, each entry is there once
  /// and in its place.
  void check(Counts& counts) {
    m_shop.reopen();
    const Result<const Job*> job = m_shop->ledger().job(m_job);
    ASSERT_THAT(job, IsOk());
    const auto& entries = (*job)->entries;
    for (std::size_t i = 0; i < m_acknowledged.size(); ++i)
      if (i + 1 >= entries.size() || hex(entries[i + 1].hash) != m_acknowledged[i]) ++counts.lost;
    EXPECT_LE(entries.size(), m_acknowledged.size() + 2) << "at most one was on its way";
    for (std::size_t i = 1; i < entries.size(); ++i)
      ASSERT_EQ(kindOf(entries[i].entry.body), kindOf(m_script[i - 1].second)) << "entry " << i + 1;
    m_shop.close();
  }

  /// Everything that can be wrong with the file.
  void inspect() const { EXPECT_THAT(need(inspectFile(m_shop.file())), testing::IsEmpty()); }

 private:
  std::filesystem::path linesFile() const { return m_shop.folder() / "lines.jsonl"; }

  /// One answer; 1 if it acknowledges an entry that was not before.
  int take(std::size_t index, const std::string& line) {
    std::istringstream in(line);
    std::string word, hash;
    std::size_t sequence = 0;
    in >> word >> sequence >> hash;
    EXPECT_TRUE(word == "signed" || word == "already") << line;
    EXPECT_EQ(sequence, index + 2) << "the job's start is entry 1";
    if (index < m_acknowledged.size()) {
      EXPECT_EQ(word, "already") << "line " << index + 1 << " was entered a second time";
      EXPECT_EQ(hash, m_acknowledged[index]);
      return 0;
    }
    m_acknowledged.push_back(hash);
    return 1;
  }

  SampleShop m_shop;
  Unsynced m_unsynced;
  std::vector<std::pair<std::string, Body>> m_script;
  Id m_job;
  std::vector<std::string> m_acknowledged;  // hash for each line that was ever answered
};

constexpr int kRunsAFile = 25;

/// Kills until `kills` have hit, or something is lost.
Counts killMany(Unsynced unsynced, int kills, bool atOperations) {
  Counts counts;
  Random random(sweepSeed() + static_cast<unsigned>(unsynced) * 2 + (atOperations ? 1 : 0));
  std::unique_ptr<Victim> victim;
  for (int runs = 0; counts.killed < kills && counts.lost == 0 && !testing::Test::HasFailure(); ++runs) {
    if (runs == 2 * kills) {
      ADD_FAILURE() << "the children end without being killed";
      break;
    }
    if (runs % kRunsAFile == 0) {
      if (victim) victim->inspect();
      victim = std::make_unique<Victim>(unsynced);
    }
    const int crashAt = atOperations ? wholeBetween(1, 24, random) : 0;
    victim->run(crashAt, wholeBetween(0, 16, random), static_cast<unsigned>(random()), counts);
    victim->check(counts);
  }
  std::cout << fmt::format("[  kills   ] CW_SEED={}: {} {}, {} entries acknowledged, {} lost\n", sweepSeed(),
                           counts.killed,
                           atOperations ? "between BEGIN and acknowledgement" : "at random moments",
                           counts.acknowledged, counts.lost);
  return counts;
}

void expectNothingLost(const Counts& counts, int kills) {
  EXPECT_EQ(counts.killed, kills);
  EXPECT_GT(counts.acknowledged, kills / 2);
  EXPECT_EQ(counts.lost, 0);
}

// A write or sync that a new entry causes lies between its BEGIN and its acknowledgement for certain: the
// sign-ins before are answered, and lines that are there already write nothing.
TEST(Kill, BetweenBeginAndAcknowledgementLosesNothing) {
  expectNothingLost(killMany(Unsynced::Kept, 60, true), 60);
}

TEST(Kill, AtRandomMomentsLosesNothing) {
  expectNothingLost(killMany(Unsynced::Kept, 140, false), 140);
}

TEST(PowerCut, BetweenBeginAndAcknowledgementLosesNothing) {
  expectNothingLost(killMany(Unsynced::Dropped, 60, true), 60);
}

TEST(PowerCut, AtRandomMomentsLosesNothing) {
  expectNothingLost(killMany(Unsynced::Dropped, 140, false), 140);
}

TEST(PowerCut, ThatKeepsSomeOfTheUnsyncedWritesLosesNothing) {
  expectNothingLost(killMany(Unsynced::Scattered, 50, true), 50);
}

// The control: were the sync missing, these tests would notice.
TEST(PowerCut, IsNoticedOnADiskThatLies) {
  EXPECT_GT(killMany(Unsynced::DroppedDespiteSync, 10, true).lost, 0);
}

}  // namespace
}  // namespace cw
