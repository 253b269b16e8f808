#include <gtest/gtest.h>
#include <sodium.h>

#include <iostream>
#include <map>

#include "core/base/resource.h"
#include "core/record/record_file.h"
#include "core/record/verify.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;

/// Every kind of entry with values of every sort, as a lines file may say them.
std::vector<std::string> everyLine(const Sheet& sheet) {
  std::vector<std::string> bodies{
      R"("kind":"warnings-read")",
      R"("kind":"done")",
      R"("kind":"done","renewed":true,"batch":"7")",
      R"("kind":"checked","answer":"yes")",
      R"("kind":"checked","answer":"no","remark":"worn")",
      R"("kind":"measured","value":"0.05","unit":"mm")",
      R"("kind":"measured","value":"-1","unit":"parsec")",
      R"("kind":"measured","value":"one","unit":"mm")",
      R"("kind":"applied","batch":"7")",
      R"("kind":"hand-started","count":4)",
      R"("kind":"hand-started","count":-4,"stuck":["9"])",
      R"("kind":"condition-confirmed","condition":"dry")",
      R"("kind":"tool-set","tool":"T-07","setting":"65 lbf.in")",
      R"("kind":"tool-set","tool":"T-07")",
      R"("kind":"tool-set","tool":"","setting":"1e300 N.m")",
      R"("kind":"counted","count":4)",
      R"("kind":"counted","count":-7)",
      R"("kind":"tightened","position":"1","known":"clicked")",
      R"("kind":"tightened","position":"77","known":"read","reading":"0 N.m")",
      R"("kind":"tightened","position":"1","known":"clicked","reading":"1 lbf.in")",
      R"("kind":"check-pass")",
      R"("kind":"check-pass","moved":["77"])",
      R"("kind":"witnessed","manner":"independent","what":["setting"],"tool":"T-07","setting":"65 lbf.in")",
      R"("kind":"witnessed","manner":"watched","count":-1)",
      R"("kind":"set-aside","reason":"wind")",
      R"("kind":"left-blank","absence":"not-recorded","reason":"lost")",
      R"("kind":"left-blank","absence":"not-applicable","reason":"none","allowed_by":"lena")",
      R"("kind":"deviated","what":"less","reason":"worn","allowed_by":"lena")",
      R"("kind":"deviated","what":"less","reason":"worn","allowed_by":"lena","low":"1 N.m","aim":"2 N.m")",
      R"("kind":"corrected","of":1,"reason":"slip","now":{"value":"2"})",
      R"("kind":"corrected","of":4,"reason":"slip","now":{"answer":"no"})",
      R"("kind":"corrected","of":5,"reason":"slip","now":{"value":"7"})",
      R"("kind":"corrected","of":17,"reason":"slip","now":{"known":"read","reading":"20 lbf.in"})",
      R"("kind":"corrected","of":900000,"reason":"slip","now":{"value":"2"})",
      R"("kind":"corrected","of":2,"reason":"slip")",
      R"("kind":"reopened","reason":"not pulled","position":"1")",
      R"("kind":"reopened","reason":"not done")",
      R"("kind":"confirmed","of":[1,900000])",
      R"("kind":"confirmed","of":[])",
      R"("kind":"tool-stopped","tool":"T-07")",
      R"("kind":"called-off","reason":"by mistake")",
      R"("kind":"paused","reason":"lunch")",
      R"("kind":"resumed")",
      R"("kind":"taken-apart","reason":"leak")",
      R"("kind":"repaired","joint":"cover","position":"4","what":"insert","reason":"worn","allowed_by":"lena")",
      R"("kind":"repaired","joint":"lid","position":"77","what":"insert","reason":"worn")",
      R"("kind":"clock-went-back")",
      R"("kind":"finished")",
      R"("kind":"finished","allowed_by":"lena","reason":"as it is")",
      R"("kind":"signed-in")",
      R"("kind":"started")"};
  std::vector<std::string> out;
  for (const std::string& body : bodies) {
    out.push_back("{" + body + R"(,"by":"mira"})");
    out.push_back("{" + body + R"(,"by":"lena","by_phone":true})");
    out.push_back("{" + body + R"(,"by":[{"person":"otto","tool":"T-99"}],"supervisor":"ada"})");
    out.push_back("{" + body + R"(,"by":"mira","step":"no such step"})");
    for (const Step& step : sheet.steps)
      out.push_back("{" + body + R"(,"by":"mira","step":")" + step.id + "\"}");
  }
  return out;
}

TEST(AnyLine, AtAnyPointOfAJobIsAllowedOrRefusedInOneSentence) {
  Bench whole;
  ASSERT_EQ(whole.workThrough(""), "");
  const std::vector<Kept> walked = whole.job().entries;
  const std::vector<std::string> lines = everyLine(whole.job().sheet);
  Bench bench;
  int judged = 0, read = 0;
  for (const Kept& kept : walked) {
    const Entry& entry = kept.entry;
    for (const std::string& line : lines) {
      const auto draft = readDraftLine(line, 1, bench.job().id);
      if (!draft) {
        EXPECT_FALSE(sentence(draft.error()).empty()) << line;
        continue;
      }
      ++read;
      const Present present{{"lena"}, bench.job().signedIn};
      auto allowed = compose(bench.job(), draft->draft, bench.floor(), present, entry.time)
                         .and_then([&](Entry composed) { return judge(bench.job(), composed, From::Line); });
      if (allowed) {
        Job after = bench.job();
        apply(after, *std::move(allowed));
        next(after);
      } else {
        EXPECT_FALSE(sentence(allowed.error()).empty()) << line;
        ++judged;
      }
    }
    auto again = judge(bench.job(), entry, From::Chain);
    ASSERT_TRUE(again) << sentence(again.error());
    apply(bench.job(), *std::move(again));
  }
  EXPECT_TRUE(bench.job().finished);
  EXPECT_GT(judged, 1000);
  std::cout << read << " lines judged at " << walked.size() << " points, " << judged << " refused\n";
}

/// The record with one field of one entry's body given another value, hashed from there on and signed anew by
/// somebody who has the key. `head` is what the chain comes to before that entry.
std::string forged(Json record, Digest head, std::size_t row, const std::string& field, const Json& value) {
  Json::Array& rows = *record.object()->at("entries").array();
  rows[row].object()->at("entry").object()->at("body").set(field, value);
  for (std::size_t i = row; i < rows.size(); ++i) {
    head = entryHash(head, canonical(rows[i].object()->at("entry")));
    rows[i].set("hash", hex(head));
  }
  record.set("head", hex(head));
  record.set("signature", hex(sign(std::string(kRecordTag) + signedPart(record), steadyKey())));
  return canonical(record);
}

TEST(AnyForgedField, IsReadWithoutHarm) {
  Bench bench;
  ASSERT_EQ(bench.workThrough(""), "");
  const Json record = *parseJson(*sealRecord(bench.job(), bench.context(), steadyKey()));
  const PublicKey key = publicOf(steadyKey());
  ASSERT_TRUE(verifyRecord(canonical(record), key).good());
  const std::vector<Json> values{Json(),
                                 Json(true),
                                 Json(0),
                                 Json(-1),
                                 Json(1'000'000'000),
                                 Json(""),
                                 Json("s1"),
                                 Json("77"),
                                 Json(std::string(2000, 'x')),
                                 Json(Json::Array{}),
                                 Json(Json::Object{}),
                                 Json(Json::Array{Json("77")})};
  const Json::Array& rows = *record.find("entries")->array();
  const auto file = readRecordFile(record);
  Digest head = genesis(file->shop, file->job, sha256(file->sheet));
  int forgeries = 0, refused = 0;
  std::map<std::string, int> seen;
  for (const Json& kept : rows) {
    const std::size_t row = static_cast<std::size_t>(&kept - rows.data());
    const Json& entry = *kept.find("entry");
    const bool isLikeTwoBefore = ++seen[*entry.find("kind")->string()] > 2;
    for (const auto& [field, was] : *entry.find("body")->object())
      for (const Json& value : isLikeTwoBefore ? std::vector<Json>{} : values) {
        const std::string bytes = forged(record, head, row, field, value);
        const Verification found = verifyRecord(bytes, key);
        if (!found.good()) {
          EXPECT_FALSE(sentence(found.problems.front()).empty());
        }
        refused += found.good() ? 0 : 1;
        (void)readRecord(bytes);
        ++forgeries;
      }
    head = entryHash(head, canonical(entry));
  }
  EXPECT_GT(refused, forgeries / 2);
  std::cout << forgeries << " forged fields read, " << refused << " refused by the rules\n";
}

}  // namespace
}  // namespace cw
