// What leaves the shop: verified first, signed, told apart by whoever gets it, and never written onto what
// must stay.
#include <gmock/gmock.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <memory>

#include "core/record/key.h"
#include "core/record/seal.h"
#include "core/record/verify.h"
#include "tests/app/command_line/call.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

namespace fs = std::filesystem;
using test::RawSqlite;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

/// The demo's shop with its two sealed records, played once and copied for each test.
class HandingOver : public testing::Test {
 protected:
  static void SetUpTestSuite() {
    s_demo = std::make_unique<TemporaryFolder>();
    const Call demo = call({"--json", "demo", "--out", s_demo->file("out")});
    ASSERT_EQ(demo.exit, 0) << demo.err;
    const Json answer = demo.json();
    for (const Json& job : *answer.find("jobs")->array()) s_jobs.push_back(*job.string());
  }
  static void TearDownTestSuite() {
    s_demo.reset();
    s_jobs.clear();
  }
  void SetUp() override {
    fs::copy(s_demo->file("out"), m_folder.path(), fs::copy_options::recursive);
    std::ofstream(file("pin")) << "2468\n";
  }

  std::string file(const std::string& name) const { return m_folder.file(name); }
  std::string bytesOf(const std::string& name) const {
    std::ifstream in(file(name), std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(in), {});
  }
  void put(const std::string& name, const std::string& bytes) const {
    std::ofstream(file(name), std::ios::binary) << bytes;
  }
  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", file("demo.shop")});
    return call(std::move(words));
  }
  Call exported(const std::string& format, const std::string& name,
                std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"record",   "export", "--job", s_jobs[0],
                                   "--format", format,   "--out", file(name)};
    words.insert(words.end(), more.begin(), more.end());
    return shop(std::move(words));
  }
  Call verified(const std::string& name, std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"record", "verify", file(name), "--key", file("key.json")};
    words.insert(words.end(), more.begin(), more.end());
    return call(std::move(words));
  }
  void addAddendum(std::size_t job, const std::string& text) const {
    const Call added = shop({"record", "addendum", "--job", s_jobs[job], "--text", text, "--by", "mira",
                             "--pin-file", file("pin")});
    ASSERT_EQ(added.exit, 0) << added.err;
  }
  /// What somebody with a database shell does; without the triggers nothing stops them.
  void tamper(const std::string& statements) const {
    test::sqlite(file("demo.shop"),
                 "DROP TRIGGER record_no_update; DROP TRIGGER addendum_no_update;"
                 "DROP TRIGGER addendum_no_delete;" +
                     statements);
  }
  void alterRecord(const std::string& from, const std::string& to) const {
    tamper("UPDATE record SET bytes = CAST(replace(CAST(bytes AS TEXT), '" + from + "', '" + to +
           "') AS BLOB) WHERE job = '" + s_jobs[0] + "'");
  }
  std::string addendumBytes() const {
    return RawSqlite(file("demo.shop")).ask("SELECT CAST(bytes AS TEXT) FROM addendum");
  }
  void savedAgain(const std::string& from, const std::string& to) const {
    const std::string command =
        "qpdf --object-streams=generate --recompress-flate '" + file(from) + "' '" + file(to) + "'";
    ASSERT_EQ(std::system(command.c_str()), 0);
  }

  static inline std::unique_ptr<TemporaryFolder> s_demo;
  static inline std::vector<std::string> s_jobs;
  TemporaryFolder m_folder;
};

TEST_F(HandingOver, ASoundRecordGoesOutInEveryForm) {
  for (const char* format : {"json", "csv", "text", "pdf"}) {
    const Call made = exported(format, std::string("out.") + format);
    EXPECT_EQ(made.exit, 0) << made.err << made.out;
  }
  EXPECT_EQ(bytesOf("out.json"), bytesOf("record.json"));
  EXPECT_EQ(verified("out.json").exit, 0);
  EXPECT_THAT(verified("out.json").out,
              AllOf(StartsWith("yes: "), HasSubstr("is the record as it was sealed")));
}

TEST_F(HandingOver, AnAlteredReadingIsRefusedWithItsEntry) {
  alterRecord(R"("position":"3")", R"("position":"4")");
  for (const char* format : {"json", "csv", "text", "pdf"}) {
    const Call refused = exported(format, std::string("out.") + format);
    EXPECT_EQ(refused.exit, 1) << format;
    EXPECT_THAT(refused.out, AllOf(StartsWith("no: nothing was exported"), HasSubstr("entry "),
                                   HasSubstr("its hash does not follow")))
        << format;
    EXPECT_FALSE(fs::exists(file(std::string("out.") + format))) << format;
  }
  EXPECT_EQ(shop({"record", "export", "--job", s_jobs[0]}).exit, 1);
  const Call json = shop({"--json", "record", "export", "--job", s_jobs[0]});
  EXPECT_EQ(json.exit, 1);
  EXPECT_GT(json.number("first_bad_entry"), 1);
}

TEST_F(HandingOver, AnAlteredSerialIsRefusedToo) {
  alterRecord("PS40-0117", "PS40-0118");
  EXPECT_THAT(exported("csv", "out.csv").out, HasSubstr("entry 1: "));
}

TEST_F(HandingOver, WhatDoesNotVerifyIsPrintedOnlyWithThatSaid) {
  alterRecord("PS40-0117", "PS40-0118");
  for (const char* format : {"json", "csv"}) {
    const Call refused = exported(format, "out", {"--unsound"});
    EXPECT_EQ(refused.exit, 2) << format;
    EXPECT_THAT(refused.err, HasSubstr("no page that could say")) << format;
  }
  const Call printed = exported("pdf", "out.pdf", {"--unsound"});
  ASSERT_EQ(printed.exit, 0) << printed.err;
  EXPECT_THAT(printed.out, HasSubstr("its pages are not signed"));
  EXPECT_EQ(verified("out.pdf").exit, 1);
  EXPECT_THAT(verified("out.pdf").out, HasSubstr("no: inside it, entry 1"));
  ASSERT_EQ(exported("text", "out.txt", {"--unsound"}).exit, 0);
  const std::string text = bytesOf("out.txt");
  EXPECT_THAT(text, StartsWith("THIS RECORD DOES NOT VERIFY: entry 1: "));
  EXPECT_NE(text.find("THIS RECORD DOES NOT VERIFY"), text.rfind("THIS RECORD DOES NOT VERIFY"));
}

TEST_F(HandingOver, AnAddendumMovedInFromAnotherRecordIsRefused) {
  addAddendum(1, "The flange is another.");
  tamper("UPDATE addendum SET job = '" + s_jobs[0] + "'");
  for (const char* format : {"json", "csv", "text", "pdf"}) {
    const Call refused = exported(format, std::string("out.") + format);
    EXPECT_EQ(refused.exit, 1) << format;
    EXPECT_THAT(refused.out, HasSubstr("addendum 1: it does not belong to this record")) << format;
  }
}

TEST_F(HandingOver, AnAlteredAddendumIsRefused) {
  addAddendum(0, "The gasket was blue.");
  tamper("UPDATE addendum SET bytes = CAST(replace(CAST(bytes AS TEXT), 'blue', 'grey') AS BLOB)");
  EXPECT_THAT(exported("pdf", "out.pdf").out, HasSubstr("addendum 1, signature: "));
}

TEST_F(HandingOver, ASignedPdfIsToldWithEveryByteOfIt) {
  addAddendum(0, "The gasket was blue.");
  const Call made = exported("pdf", "out.pdf");
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_THAT(made.out, HasSubstr("every byte of it is signed with key"));
  const Call good = verified("out.pdf");
  EXPECT_EQ(good.exit, 0) << good.out;
  EXPECT_THAT(good.out, AllOf(HasSubstr("is the file that was given out"), HasSubstr("addenda: 1")));
  const std::string pdf = bytesOf("out.pdf");
  for (std::size_t at = 0; at < pdf.size(); at += 1 + pdf.size() / 60) {
    std::string altered = pdf;
    altered[at] = static_cast<char>(altered[at] ^ 1);
    put("altered.pdf", altered);
    const Call told = verified("altered.pdf");
    EXPECT_EQ(told.exit, 1) << "byte " << at;
    EXPECT_THAT(told.out, HasSubstr("is not the file that was given out")) << "byte " << at;
  }
  put("longer.pdf", pdf + "\n");
  EXPECT_EQ(verified("longer.pdf").exit, 1);
}

TEST_F(HandingOver, APdfSavedAgainIsNotTheFileButItsDataIsSound) {
  ASSERT_EQ(exported("pdf", "out.pdf").exit, 0);
  savedAgain("out.pdf", "again.pdf");
  const Call again = verified("again.pdf");
  EXPECT_EQ(again.exit, 1);
  EXPECT_THAT(again.out, AllOf(HasSubstr("is not the file that was given out"),
                               HasSubstr("its data inside is sound"), Not(HasSubstr("damaged"))));
  const Call json = call({"--json", "record", "verify", file("again.pdf"), "--key", file("key.json")});
  EXPECT_EQ(json.word("kind"), "pdf");
  EXPECT_EQ(json.word("pages"), "unsigned");
}

TEST_F(HandingOver, WithoutTheSecretKeyThePagesAreSaidToBeUnsigned) {
  fs::rename(file("demo.shop.secret-key"), file("elsewhere"));
  const Call made = exported("pdf", "out.pdf");
  ASSERT_EQ(made.exit, 0) << made.err;
  EXPECT_THAT(made.out, AllOf(HasSubstr("its pages are not signed"), HasSubstr("there is no such file")));
  const Call told = verified("out.pdf");
  EXPECT_EQ(told.exit, 1);
  EXPECT_THAT(told.out, AllOf(HasSubstr("given out unsigned"), HasSubstr("its data inside is sound")));
  ASSERT_EQ(exported("pdf", "signed.pdf", {"--secret", file("elsewhere")}).exit, 0);
  EXPECT_EQ(verified("signed.pdf").exit, 0);
  put("other-key", writeSecretKey(makeKey()));
  EXPECT_EQ(exported("pdf", "wrong.pdf", {"--secret", file("other-key")}).exit, 2);
  EXPECT_FALSE(fs::exists(file("wrong.pdf")));
}

TEST_F(HandingOver, WithAnotherPublicKeyItCannotBeTold) {
  put("other.json", writePublicKey(publicOf(makeKey())));
  for (const char* name : {"record.pdf", "record.json"}) {
    const Call told = call({"record", "verify", file(name), "--key", file("other.json")});
    EXPECT_EQ(told.exit, 1);
    EXPECT_THAT(told.out,
                AllOf(testing::ContainsRegex("cannot be (told|checked)"), Not(HasSubstr("altered after"))));
  }
}

TEST_F(HandingOver, AnAddendumIsVerifiedAgainstItsRecordOrThatRecordsPdf) {
  addAddendum(0, "The gasket was blue.");
  put("addendum.json", addendumBytes());
  EXPECT_EQ(verified("addendum.json").exit, 2);
  EXPECT_THAT(verified("addendum.json").err, HasSubstr("--record FILE"));
  for (const char* record : {"record.json", "record.pdf"}) {
    const Call good = verified("addendum.json", {"--record", file(record)});
    EXPECT_EQ(good.exit, 0) << good.out << good.err;
    EXPECT_THAT(good.out, HasSubstr("is addendum 1 to that record"));
  }
  const Call other = verified("addendum.json", {"--record", file("discharge_flange_record.json")});
  EXPECT_EQ(other.exit, 1);
  EXPECT_THAT(other.out, HasSubstr("does not belong to this record"));
  EXPECT_EQ(verified("record.json", {"--record", file("record.json")}).exit, 2);
}

TEST_F(HandingOver, WhatIsNoneOfThemIsSaidToBeNone) {
  EXPECT_THAT(verified("key.json").out, HasSubstr("is no record, addendum or PDF"));
  EXPECT_EQ(verified("key.json").exit, 1);
  put("empty.pdf", "%PDF-1.4\n%%EOF\n");
  EXPECT_EQ(verified("empty.pdf").exit, 1);
  EXPECT_THAT(verified("empty.pdf").out, HasSubstr("inside it"));
}

TEST_F(HandingOver, NothingIsReplacedWithoutForceAndSomeThingsNever) {
  put("sheet.json", bytesOf("sheet.json"));
  const std::vector<std::vector<std::string>> writers{
      {"record", "export", "--job", s_jobs[0]},
      {"record", "export", "--job", s_jobs[0], "--format", "pdf"},
      {"record", "export", "--job", s_jobs[0], "--format", "csv"},
      {"key", "export"},
      {"sheet", "export", std::string(*parseJson(bytesOf("sheet.json"))->find("id")->string())},
      {"sheet", "print", file("sheet.json")},
      {"library", "export", "--kind", "grades"}};
  fs::create_symlink(file("demo.shop"), file("link"));
  fs::create_hard_link(file("demo.shop.secret-key"), file("hard"));
  const std::string shopBytes = bytesOf("demo.shop"), keyBytes = bytesOf("demo.shop.secret-key");
  for (const std::vector<std::string>& writer : writers) {
    const auto to = [&](const std::string& name, bool force) {
      std::vector<std::string> words = writer;
      words.insert(words.end(), {"--out", file(name)});
      if (force) words.push_back("--force");
      return shop(std::move(words)).exit;
    };
    put("old", "old");
    EXPECT_EQ(to("old", false), 2) << writer[0] << writer[1];
    EXPECT_EQ(bytesOf("old"), "old") << writer[0] << writer[1];
    EXPECT_EQ(to("old", true), 0) << writer[0] << writer[1];
    EXPECT_NE(bytesOf("old"), "old") << writer[0] << writer[1];
    for (const char* name :
         {"demo.shop", "demo.shop-journal", "demo.shop-wal", "demo.shop.secret-key", "link", "hard", "."})
      for (const bool force : {false, true})
        EXPECT_EQ(to(name, force), 2) << writer[0] << writer[1] << " " << name;
    EXPECT_FALSE(fs::exists(file("demo.shop-journal")));
  }
  EXPECT_EQ(bytesOf("demo.shop"), shopBytes);
  EXPECT_EQ(bytesOf("demo.shop.secret-key"), keyBytes);
  for (const auto& each : fs::directory_iterator(m_folder.path()))
    EXPECT_THAT(each.path().filename().string(), Not(HasSubstr(".part")));
}

TEST_F(HandingOver, TheDemoTakesAFolderOfItsOwn) {
  fs::create_directory(file("taken"));
  put("taken/record.pdf", "precious");
  const Call refused = call({"demo", "--out", file("taken")});
  EXPECT_EQ(refused.exit, 2);
  EXPECT_THAT(refused.err, HasSubstr("record.pdf"));
  EXPECT_EQ(bytesOf("taken/record.pdf"), "precious");
  EXPECT_FALSE(fs::exists(file("taken/demo.shop")));
  EXPECT_EQ(call({"demo", "--out", file("taken"), "--force"}).exit, 0);
  EXPECT_NE(call({"demo", "--out", file("taken"), "--force"}).exit, 0) << "never onto a shop";
}

}  // namespace
}  // namespace cw
