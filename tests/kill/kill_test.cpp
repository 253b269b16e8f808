#include <fmt/format.h>
#include <signal.h>
#include <stdio.h>
#include <sys/wait.h>
#include <unistd.h>

#include <iostream>
#include <map>
#include <sstream>

#include "core/store/inspect.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/kill_script.h"
#include "tests/support/matchers.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

using test::need;
using test::SampleShop;
using test::Unsynced;

/// A child process, and what it says line by line.
class Child {
 public:
  explicit Child(std::vector<std::string> words) {
    int ends[2];
    if (::pipe(ends) != 0) throw std::runtime_error("no pipe");
    m_process = ::fork();
    if (m_process == 0) {
      ::dup2(ends[1], STDOUT_FILENO);
      ::close(ends[0]), ::close(ends[1]);
      std::vector<char*> pointers{const_cast<char*>(CW_APPEND_CHILD)};
      for (std::string& word : words) pointers.push_back(word.data());
      pointers.push_back(nullptr);
      ::execv(CW_APPEND_CHILD, pointers.data());
      ::_exit(127);
    }
    ::close(ends[1]);
    m_lines = ::fdopen(ends[0], "r");
  }
  ~Child() {
    if (m_process > 0) kill(), wait();
    ::fclose(m_lines);
  }
  Child(const Child&) = delete;
  Child& operator=(const Child&) = delete;

  /// Its next whole line; nothing once it is dead and all is read.
  std::optional<std::string> line() {
    std::string out;
    for (int c = ::fgetc(m_lines); c != EOF; c = ::fgetc(m_lines)) {
      if (c == '\n') return out;
      out += static_cast<char>(c);
    }
    return std::nullopt;
  }
  void kill() { ::kill(m_process, SIGKILL); }
  /// True if it was killed.
  bool wait() {
    int status = 0;
    ::waitpid(std::exchange(m_process, -1), &status, 0);
    return WIFSIGNALED(status) && WTERMSIG(status) == SIGKILL;
  }

 private:
  pid_t m_process = -1;
  FILE* m_lines = nullptr;
};

struct Counts {
  int killed = 0;
  int beforeAck = 0;  ///< of them, after an entry was begun and before it was acknowledged
  int acknowledged = 0;
  int lost = 0;
};

/// One shop file with a job, in which a child is killed again and again.
class Victim {
 public:
  explicit Victim(Unsynced unsynced, bool safe = true) : m_unsynced(unsynced), m_safe(safe) {
    m_job = m_shop.startJob();
    m_shop.close();
  }

  /// Runs a child until it dies. `crashAt` 0: from outside, after `linesBefore` lines.
  void run(int crashAt, int linesBefore, unsigned seed, Counts& counts) {
    std::vector<std::string> words{m_shop.file().string(),
                                   m_job.text(),
                                   std::to_string(std::max(0, m_reached - 3)),
                                   std::to_string(crashAt == 0 ? 500 : 40),
                                   std::to_string(crashAt),
                                   std::to_string(static_cast<int>(m_unsynced)),
                                   std::to_string(seed)};
    if (!m_safe) words.push_back("unsafe");
    Child child(words);
    bool between = false;
    for (int lines = 0;; ++lines) {
      if (crashAt == 0 && lines == linesBefore) child.kill();
      const auto line = child.line();
      if (!line) break;
      between = line->starts_with("begin");
      take(*line, counts);
    }
    counts.killed += child.wait() ? 1 : 0;
    counts.beforeAck += between ? 1 : 0;
  }

  /// What the next program finds: the file opens, nothing acknowledged is missing, the script goes on where
  /// it was.
  void check(Counts& counts) {
    m_shop.reopen();
    const Result<const Job*> job = m_shop->ledger().job(m_job);
    ASSERT_THAT(job, IsOk());
    std::map<std::string, Receipt> found;
    for (const Kept& kept : (*job)->entries)
      found[kept.entry.id.text()] = {kept.entry.sequence, hex(kept.hash), false};
    EXPECT_EQ(found.size(), (*job)->entries.size()) << "an entry is there twice";
    for (const auto& [id, receipt] : m_acknowledged)
      if (found[id].sequence != receipt.sequence || found[id].hash != receipt.hash) ++counts.lost;
    const int before = m_reached;
    while (found.contains(test::scriptedDraft(m_reached).id.text())) ++m_reached;
    EXPECT_LE(m_reached, before + 501);
    m_shop.close();
  }

  /// Every byte that a reader could doubt.
  void checkThoroughly() { EXPECT_THAT(need(inspectFile(m_shop.file())), testing::IsEmpty()); }

 private:
  void take(const std::string& line, Counts& counts) {
    EXPECT_FALSE(line.starts_with("refused")) << line;
    std::istringstream in(line);
    std::string kind, id;
    Receipt receipt;
    if (!(in >> kind >> id >> receipt.sequence >> receipt.hash)) return;
    const auto [earlier, isNew] = m_acknowledged.emplace(id, receipt);
    EXPECT_EQ(earlier->second.hash, receipt.hash) << "a replay was entered a second time";
    counts.acknowledged += isNew ? 1 : 0;
  }

  SampleShop m_shop;
  Unsynced m_unsynced;
  bool m_safe;
  Id m_job;
  std::map<std::string, Receipt> m_acknowledged;
  int m_reached = 0;  // how much of the script the file is known to hold
};

constexpr int kRunsAFile = 35;

/// Kills until `kills` have hit, or something is lost.
void killMany(Unsynced unsynced, int kills, bool atOperations, Counts& counts, bool safe = true) {
  Random random(sweepSeed() + static_cast<unsigned>(unsynced) * 2 + (atOperations ? 1 : 0));
  std::unique_ptr<Victim> victim;
  const int wanted = counts.killed + kills;
  for (int runs = 0; counts.killed < wanted && counts.lost == 0 && !testing::Test::HasFailure(); ++runs) {
    ASSERT_LT(runs, 2 * kills) << "children end without being killed";
    if (runs % kRunsAFile == 0) {
      if (victim) victim->checkThoroughly();
      victim = std::make_unique<Victim>(unsynced, safe);
    }
    const int crashAt = atOperations ? wholeBetween(1, 24, random) : 0;
    victim->run(crashAt, wholeBetween(0, 25, random), static_cast<unsigned>(random()), counts);
    victim->check(counts);
  }
}

/// 200 kills: three in ten where a write or sync hits the file, which is after BEGIN and before the
/// acknowledgement for certain; the others whenever they hit.
void killTwoHundred(Unsynced unsynced) {
  Counts atOperations, whenever;
  killMany(unsynced, 60, true, atOperations);
  killMany(unsynced, 140, false, whenever);
  std::cout << fmt::format(
      "[  kills   ] CW_SEED={}: {} between BEGIN and acknowledgement, {} at random moments; {} entries "
      "acknowledged, {} lost\n",
      sweepSeed(), atOperations.beforeAck, whenever.killed, atOperations.acknowledged + whenever.acknowledged,
      atOperations.lost + whenever.lost);
  EXPECT_EQ(atOperations.beforeAck, 60);
  EXPECT_EQ(whenever.killed, 140);
  EXPECT_GT(atOperations.acknowledged + whenever.acknowledged, 200);
  EXPECT_EQ(atOperations.lost + whenever.lost, 0);
}

TEST(Kill, LosesNothingAcknowledged) {
  killTwoHundred(Unsynced::Kept);
}

TEST(PowerCut, LosesNothingAcknowledged) {
  killTwoHundred(Unsynced::Dropped);
}

TEST(PowerCut, ThatKeepsAnyOfTheUnsyncedWritesLosesNothingAcknowledged) {
  Counts counts;
  killMany(Unsynced::Scattered, 50, true, counts);
  EXPECT_EQ(counts.beforeAck, 50);
  EXPECT_EQ(counts.lost, 0);
}

// The control: were entries committed without a sync, these tests would notice.
TEST(PowerCut, IsNoticedWithoutSync) {
  Counts counts;
  killMany(Unsynced::Dropped, 10, true, counts, false);
  EXPECT_GT(counts.lost, 0);
}

}  // namespace
}  // namespace cw
