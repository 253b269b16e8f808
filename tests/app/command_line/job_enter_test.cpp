// Lines that come through pipes, without end, or whose receipts nobody takes.
#include <gmock/gmock.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>
#include <sstream>
#include <thread>

#include "app/command_line/standard_streams.h"
#include "tests/app/command_line/call.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::StartsWith;

constexpr std::string_view kSignIn = "{\"kind\":\"signed-in\",\"by\":\"mira\",\"pin\":\"2468\"}\n";
constexpr std::string_view kTwoLines =
    "{\"kind\":\"signed-in\",\"by\":\"mira\",\"pin\":\"2468\"}\n# "
    "read\n{\"kind\":\"warnings-read\",\"by\":\"mira\"}\n";

/// Takes so many bytes, then none.
class FullDisk : public std::streambuf {
 public:
  explicit FullDisk(std::size_t room) : m_room(room) {}
  std::string taken;

 protected:
  int_type overflow(int_type c) override {
    if (taken.size() == m_room) return traits_type::eof();
    taken.push_back(traits_type::to_char_type(c));
    return c;
  }

 private:
  std::size_t m_room;
};

/// A job by a quick joint, and lines for it from anywhere.
class JobEnter : public testing::Test {
 protected:
  void SetUp() override {
    for (const auto& [name, pin] :
         {std::pair{"ines", "1357"}, std::pair{"bea", "4680"}, std::pair{"mira", "2468"}})
      std::ofstream(file(name)) << pin << "\n";
    ASSERT_EQ(shop({"shop", "init", "--name", "Test shop", "--register",
                    std::string(CW_RESOURCES) + "/demo/register.json"})
                  .exit,
              0);
    const Call sheet =
        shop({"sheet", "import", std::string(CW_RESOURCES) + "/examples/flange_nps4_class150.json",
              "--submit", "--by", "ines", "--pin-file", file("ines")});
    ASSERT_EQ(shop({"sheet", "issue", sheet.word("sheet"), "--revision", sheet.word("revision"), "--by",
                    "bea", "--pin-file", file("bea")})
                  .exit,
              0);
    const Call start = shop({"job", "start", "--sheet", sheet.word("sheet"), "--work-order", "WO 9",
                             "--machine", "F-7", "--by", "mira", "--pin-file", file("mira")});
    ASSERT_EQ(start.exit, 0) << start.err;
    m_job = start.word("job");
  }

  std::string file(const std::string& name) const { return m_folder.file(name); }
  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", file("shop.cw"), "--json"});
    return call(std::move(words));
  }
  Call entered(const std::string& source, std::istream& in, std::streambuf* out = nullptr) const {
    const std::string shopFile = file("shop.cw");
    const char* words[] = {"clampwright", "--shop",       shopFile.c_str(), "job",
                           "enter",       source.c_str(), "--job",          m_job.c_str()};
    std::ostringstream lines, err;
    std::ostream given(out == nullptr ? lines.rdbuf() : out);
    Call made;
    made.exit = runCommandLine(static_cast<int>(std::size(words)), words, {given, err, in});
    made.out = lines.str(), made.err = err.str();
    return made;
  }
  Call enteredFrom(const std::string& source, const std::string& input = "") const {
    std::istringstream in(input);
    return entered(source, in);
  }

  TemporaryFolder m_folder;
  std::string m_job;
};

TEST_F(JobEnter, ReadsAPipeOnce) {
  int ends[2];
  ASSERT_EQ(pipe(ends), 0);
  std::thread writer([&] {
    for (const char c : kTwoLines) EXPECT_EQ(write(ends[1], &c, 1), 1);
    close(ends[1]);
  });
  const Call made = enteredFrom("/dev/fd/" + std::to_string(ends[0]));
  writer.join();
  close(ends[0]);
  EXPECT_EQ(made.exit, 0) << made.err;
  EXPECT_THAT(made.out, StartsWith("signed 2 "));
  EXPECT_THAT(made.out, HasSubstr("\nsigned 3 "));
}

TEST_F(JobEnter, ReadsStandardInput) {
  const Call made = enteredFrom("-", std::string(kTwoLines));
  EXPECT_EQ(made.exit, 0) << made.err;
  EXPECT_THAT(made.out, HasSubstr("\nsigned 3 "));
}

TEST_F(JobEnter, ReadsALastLineWithoutEnd) {
  EXPECT_EQ(enteredFrom("-", std::string(kSignIn.substr(0, kSignIn.size() - 1))).exit, 0);
}

/// A step left out by the lead's word, with more members to the line.
std::string leftOut(const std::string& more) {
  return R"({"kind":"left-blank","by":"mira","absence":"not-recorded","reason":"out of reach")" + more +
         "}\n";
}

TEST_F(JobEnter, TakesThePinsOfWhoeverStandsBehindALine) {
  const std::string begin(kTwoLines), lead = R"(,"allowed_by":"bea")";
  EXPECT_THAT(enteredFrom("-", begin + leftOut(lead + R"(,"allowed_pin":"0000")")).err,
              AllOf(HasSubstr("line 4"), HasSubstr("this is not the PIN of Bea")));
  EXPECT_THAT(enteredFrom("-", begin + leftOut(R"(,"allowed_pin":"4680")")).err,
              AllOf(HasSubstr("line 4.allowed_pin"), HasSubstr("names nobody whose PIN it is")));
  EXPECT_THAT(enteredFrom("-", begin + leftOut(lead + R"(,"supervisor_pin":"4680")")).err,
              AllOf(HasSubstr("line 4.supervisor_pin"), HasSubstr("name the supervisor")));
  EXPECT_THAT(enteredFrom("-", begin + leftOut(R"(,"allowed_by":"mira","pin":"2468","allowed_pin":"1")")).err,
              HasSubstr("two PINs are given for “mira”"));
  test::RawSqlite rows(file("shop.cw"));
  EXPECT_EQ(rows.ask("SELECT count(*) FROM entry"), "3") << "nothing of what was refused";
  const Call made = enteredFrom("-", begin + leftOut(lead + R"(,"allowed_pin":"4680")"));
  EXPECT_EQ(made.exit, 0) << made.err;
  EXPECT_EQ(rows.ask("SELECT json_extract(text, '$.vouched[0].person') || ' by ' || "
                     "json_extract(text, '$.vouched[0].how') FROM entry WHERE sequence = 4"),
            "bea by pin");
}

TEST_F(JobEnter, SaysHowALeadsWordCameWithoutThePin) {
  for (const auto& [more, how] : {std::pair{R"(,"by_phone":true)", "phone"}, std::pair{"", "written"}}) {
    const Call made =
        enteredFrom("-", std::string(kTwoLines) + leftOut(std::string(R"(,"allowed_by":"bea")") + more));
    ASSERT_EQ(made.exit, 0) << made.err;
    test::RawSqlite rows(file("shop.cw"));
    EXPECT_EQ(rows.ask("SELECT json_extract(text, '$.vouched[0].how') FROM entry ORDER BY sequence DESC"),
              how);
    enteredFrom("-", std::string(kSignIn) +
                         R"({"kind":"taken-apart","by":"mira","step":"s1","reason":"anew"})" + "\n");
  }
}

TEST_F(JobEnter, RefusesWhatTheProgramWorksOut) {
  for (const std::string field :
       {R"("within":true)", R"("pass":1)", R"("target":"65 lbf.in")", R"("setting":"65 lbf.in")"}) {
    const Call made = enteredFrom(
        "-", R"({"kind":"tightened","by":"mira","position":"1","known":"clicked",)" + field + "}\n");
    EXPECT_EQ(made.exit, 2);
    EXPECT_THAT(made.err, HasSubstr("is not stated, the program works it out")) << field;
  }
}

TEST_F(JobEnter, AJobThatIsCalledOffIsListedSoAndTakesNoMore) {
  const Call off =
      enteredFrom("-", R"({"kind":"called-off","by":"mira","pin":"2468","reason":"the wrong machine"})"
                       "\n");
  ASSERT_EQ(off.exit, 0) << off.err;
  EXPECT_THAT(shop({"job", "list"}).out, HasSubstr("\"state\":\"called-off\""));
  const Call more = enteredFrom("-", std::string(kSignIn));
  EXPECT_EQ(more.exit, 2);
  EXPECT_THAT(more.err, HasSubstr("the job was called off and takes no more entries"));
  EXPECT_EQ(shop({"job", "seal", "--job", m_job, "--by", "mira", "--pin-file", file("mira")}).exit, 2);
}

TEST_F(JobEnter, SaysThatThereIsNothingToEnter) {
  for (const std::string empty : {"", "\n\n", "# only a remark\n"}) {
    const Call made = enteredFrom("-", empty);
    EXPECT_EQ(made.exit, 2);
    EXPECT_THAT(made.err, HasSubstr("standard input: there is no entry in it"));
  }
  std::ofstream(file("empty.jsonl"));
  EXPECT_THAT(enteredFrom(file("empty.jsonl")).err, HasSubstr("empty.jsonl: there is no entry in it"));
}

TEST_F(JobEnter, SaysWhatIsWrongWithThePath) {
  EXPECT_THAT(enteredFrom(file("absent.jsonl")).err, HasSubstr("absent.jsonl"));
  EXPECT_EQ(enteredFrom(m_folder.file("")).exit, 3);
}

TEST_F(JobEnter, StopsWhereAReceiptCannotBeWritten) {
  for (const std::size_t room : {std::size_t{0}, std::size_t{20}}) {
    FullDisk full(room);
    std::istringstream in{std::string(kTwoLines)};
    const Call made = entered("-", in, &full);
    EXPECT_EQ(made.exit, 3);
    EXPECT_THAT(made.err, HasSubstr("line 1: it was entered, but its receipt could not be written"));
  }
  const Call again = enteredFrom("-", std::string(kTwoLines));
  EXPECT_THAT(again.out, StartsWith("already 2 "));
  EXPECT_THAT(again.out, HasSubstr("\nsigned 3 "))
      << "the second line was not entered behind the first's back";
}

TEST_F(JobEnter, BoundsALine) {
  const std::string longest(1 << 20, ' ');
  EXPECT_EQ(enteredFrom("-", longest + "\n" + std::string(kSignIn)).exit, 0);
  const Call made = enteredFrom("-", std::string(kSignIn) + longest + " \n");
  EXPECT_EQ(made.exit, 2);
  EXPECT_THAT(made.err, HasSubstr("line 2: this line is longer than 1 MiB"));
}

/// Every byte is asked for once, so an endless line must be given up early.
class Endless : public std::streambuf {
 public:
  std::size_t given = 0;

 protected:
  int_type underflow() override {
    given += sizeof m_block;
    std::fill(std::begin(m_block), std::end(m_block), 'x');
    setg(m_block, m_block, m_block + sizeof m_block);
    return traits_type::to_int_type(*m_block);
  }

 private:
  char m_block[4096];
};

TEST_F(JobEnter, GivesUpAnEndlessLine) {
  Endless endless;
  std::istream in(&endless);
  EXPECT_EQ(entered("-", in).exit, 2);
  EXPECT_LT(endless.given, std::size_t{2} << 20);
}

/// In a process of its own: what it says by its exit code.
template <class Work>
int inAnotherProcess(Work work) {
  const pid_t child = fork();
  if (child == 0) _exit(work());
  int status = 0;
  waitpid(child, &status, 0);
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST(StandardStreams, AreNotTakenByTheNextFile) {
  EXPECT_EQ(inAnotherProcess([] {
              close(STDOUT_FILENO);
              holdStandardStreams();
              const int next = dup(STDERR_FILENO);
              return next > STDERR_FILENO && write(STDOUT_FILENO, "x", 1) == -1 ? 7 : 1;
            }),
            7);
}

TEST(StandardStreams, LetAPipeThatNobodyReadsFail) {
  EXPECT_EQ(inAnotherProcess([] {
              holdStandardStreams();
              int ends[2];
              if (pipe(ends) != 0) return 1;
              close(ends[0]);
              return write(ends[1], "x", 1) == -1 ? 7 : 1;
            }),
            7);
}

}  // namespace
}  // namespace cw
