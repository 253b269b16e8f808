// The program's window is killed while somebody works through jobs in it, again and again, and each time
// opened anew on what it left behind.
#include <fmt/format.h>

#include <iostream>
#include <map>
#include <sstream>

#include "core/record/next.h"
#include "core/store/inspect.h"
#include "tests/kill/child.h"
#include "tests/kill/next_words.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

using test::Child;
using test::need;

constexpr int kWindows = 100;
constexpr int kMostLines = 9;
/// A key may be half carried out: a sign-in with what it is for, and a clock that went back before each.
constexpr std::size_t kMostOnTheWay = 4;

/// What the window showed as signed.
struct ShownJob {
  std::map<int, std::string> heads;  // by count of entries
};

class WindowVictim {
 public:
  WindowVictim() {
    const Moment now = SystemClock().now();
    Calibration lasting = *test::sampleTools().front().lastCalibration();
    lasting.due = *parseDate("9999-12-31");
    need(m_shop->tools().calibrate("T-07", lasting, {"lena", now}));
    m_shop.close();
  }

  /// Lets a window work until it has said so many lines, and kills it.
  void run(int lines) {
    Child window(CW_DRIVEN_WINDOW, {m_shop.file().string(), m_shop.folder().path().string()});
    while (lines-- > 0) {
      const auto line = window.line();
      ASSERT_TRUE(line) << "the window ended by itself";
      take(*line);
    }
    window.kill();
    while (const auto line = window.line()) take(*line);  // shown before it died
    EXPECT_TRUE(window.wait());
  }

  /// Nothing that was shown is missing, nothing is there that nobody did, and where it goes on is known.
  void check() {
    m_shop.reopen();
    for (const auto& [text, shown] : m_jobs) {
      const Result<const Job*> job = m_shop->ledger().job(*Id::parse(text));
      ASSERT_THAT(job, IsOk());
      const auto& entries = (*job)->entries;
      for (const auto& [count, head] : shown.heads) {
        const auto index = static_cast<std::size_t>(count - 1);
        if (index >= entries.size() || hex(entries[index].hash) != head) ++m_lost;
      }
      EXPECT_LE(entries.size(), static_cast<std::size_t>(shown.heads.rbegin()->first) + kMostOnTheWay);
      m_next[text] = test::inWords(next(**job));
    }
    m_shop.close();
  }

  void inspect() const { EXPECT_THAT(need(inspectFile(m_shop.file())), testing::IsEmpty()); }
  int lost() const { return m_lost; }
  int acknowledged() const { return m_acknowledged; }
  int resumed() const { return m_resumed; }

 private:
  void take(const std::string& line) {
    std::istringstream in(line);
    std::string word, job, head, next;
    int count = 0;
    in >> word >> job >> count >> head >> next;
    ASSERT_TRUE(word == "shown" || word == "at") << line;
    m_jobs[job].heads[count] = head;
    word == "shown" ? ++m_acknowledged : ++m_resumed;
    // Signing in changes nothing of what is next; the first that a new window shows is what was left.
    if (const auto left = m_next.find(job); word == "at" && left != m_next.end()) {
      EXPECT_EQ(next, left->second);
    }
    m_next.erase(job);
  }

  test::SampleShop m_shop;
  std::map<std::string, ShownJob> m_jobs;
  std::map<std::string, std::string> m_next;  // of each job, when no window was open
  int m_lost = 0, m_acknowledged = 0, m_resumed = 0;
};

TEST(WindowKill, LosesNothingShownAndGoesOnExactly) {
  Random random(sweepSeed());
  WindowVictim victim;
  int killed = 0;
  for (; killed < kWindows && victim.lost() == 0 && !testing::Test::HasFailure(); ++killed) {
    victim.run(wholeBetween(0, kMostLines, random));
    victim.check();
  }
  victim.inspect();
  std::cout << fmt::format(
      "[  kills   ] CW_SEED={}: {} windows, {} entries shown, {} jobs brought up, {} lost\n", sweepSeed(),
      killed, victim.acknowledged(), victim.resumed(), victim.lost());
  EXPECT_EQ(killed, kWindows);
  EXPECT_EQ(victim.lost(), 0);
  EXPECT_GT(victim.acknowledged(), kWindows);
  EXPECT_GT(victim.resumed(), kWindows / 2);
}

}  // namespace
}  // namespace cw
