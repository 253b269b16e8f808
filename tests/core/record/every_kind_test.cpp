#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "core/record/verify.h"
#include "tests/support/every_kind.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;
using testing::IsEmpty;

const std::vector<Job>& jobs() {
  static const std::vector<Job> all = everyKindJobs();
  return all;
}

std::size_t alignedUp(std::size_t at, std::size_t alignment) {
  return (at + alignment - 1) / alignment * alignment;
}

/// Members that `fields` leaves out show as room that no listed field takes and no alignment explains.
TEST(EveryKind, ListsAllItsMembers) {
  forEachKind([]<class T>() {
    if constexpr (!std::is_empty_v<T>) {
      const T body;
      auto facts = fieldsOf(body);
      std::sort(facts.begin(), facts.end(), [](const auto& a, const auto& b) { return a.begin < b.begin; });
      const char* base = reinterpret_cast<const char*>(&body);
      std::size_t end = 0;
      for (const FieldFact& fact : facts) {
        EXPECT_EQ(static_cast<std::size_t>(fact.begin - base), alignedUp(end, fact.alignment))
            << T::kKind << ": a member before “" << fact.key << "” is not listed";
        end = static_cast<std::size_t>(fact.begin - base) + fact.size;
      }
      EXPECT_EQ(alignedUp(end, alignof(T)), sizeof(T)) << T::kKind << ": its last members are not listed";
    }
  });
}

TEST(EveryKind, IsWrittenAndReadBackWithEveryField) {
  std::size_t kinds = 0;
  forEachKind([&]<class T>() {
    const T body = filled<T>();
    const Json json = bodyToJson(body);
    for (const FieldFact& fact : fieldsOf(body))
      EXPECT_NE(json.find(fact.key), nullptr) << T::kKind << "." << fact.key << " is not written";
    EXPECT_EQ(json.object()->size(), fieldsOf(body).size()) << T::kKind << ": two fields have one name";
    const auto again = bodyFromJson(T::kKind, *parseJson(canonical(json)), "body", From::Chain);
    ASSERT_THAT(again, IsOk()) << T::kKind;
    EXPECT_EQ(*again, Body(body)) << T::kKind << ": " << canonical(json) << " became "
                                  << canonical(bodyToJson(*again));
    ++kinds;
  });
  EXPECT_EQ(kinds, bodyKinds().size());
}

TEST(EveryKind, RefusesAFieldThatNobodyKnows) {
  forEachKind([]<class T>() {
    Json json = bodyToJson(filled<T>());
    json.set("no_such_field", "1");
    EXPECT_THAT(bodyFromJson(T::kKind, json, "body", From::Chain),
                FailsWith(ErrorCode::InvalidInput, HasSubstr("no_such_field")))
        << T::kKind;
  });
}

TEST(EveryKind, TakesNothingInALineThatTheProgramWorksOut) {
  forEachKind([]<class T>() {
    const T body = filled<T>();
    const Json whole = bodyToJson(body);
    Json stated{Json::Object{}};
    for (const FieldFact& fact : fieldsOf(body))
      if (!fact.programsOwn) stated.set(fact.key, *whole.find(fact.key));
    const auto line = bodyFromJson(T::kKind, stated, "line 1", From::Line);
    ASSERT_THAT(line, IsOk()) << T::kKind;
    EXPECT_EQ(canonical(bodyToJson(*bodyFromJson(T::kKind, stated, "body", From::Chain))),
              canonical(bodyToJson(*line)));
    for (const FieldFact& fact : fieldsOf(body)) {
      if (!fact.programsOwn) continue;
      Json more = stated;
      more.set(fact.key, *whole.find(fact.key));
      EXPECT_THAT(bodyFromJson(T::kKind, more, "line 1", From::Line),
                  FailsWith(ErrorCode::InvalidInput, HasSubstr(fact.key)))
          << T::kKind << "." << fact.key;
    }
  });
}

/// What the fields of persons and tools hold, told from their types alone.
struct NamesByType {
  std::set<std::string> people, tools;
  void operator()(std::string_view, const PersonSign& name) { people.insert(name.text); }
  void operator()(std::string_view, const ToolId& name) { tools.insert(name.text); }
  template <class T>
  void operator()(std::string_view key, const Derived<T>& field) {
    (*this)(key, field.value);
  }
  template <class T>
  void operator()(std::string_view key, const AsAtUse<T>& field) {
    (*this)(key, field.value);
  }
  template <class T>
  void operator()(std::string_view, const T&) {}
};

TEST(EveryKind, NamesEverybodyAndEveryToolThatItsFieldsHold) {
  std::size_t people = 0;
  forEachKind([&]<class T>() {
    const T body = filled<T>();
    NamesByType wanted;
    T::fields(body, wanted);
    EXPECT_EQ(namedIn(Body(body)).people, wanted.people) << T::kKind;
    EXPECT_EQ(namedIn(Body(body)).tools, wanted.tools) << T::kKind;
    people += wanted.people.size();
    for (const FieldFact& fact : fieldsOf(body)) {  // what the file calls by a person is one
      const Json json = bodyToJson(body);
      const bool saysByWhom = fact.key.ends_with("_by");
      EXPECT_EQ(saysByWhom, saysByWhom && wanted.people.contains(*json.find(fact.key)->string())) << fact.key;
    }
  });
  EXPECT_GT(people, 5u);
}

TEST(EveryKind, IsCorrectedInItsValuesOnly) {
  std::size_t corrected = 0;
  forEachKind([&]<class T>() {
    EXPECT_EQ(isCorrectable(Body(T())), T::kCorrection == Correction::Values) << T::kKind;
    const T right = filled<T>();
    const Json whole = bodyToJson(right);
    for (const FieldFact& fact : fieldsOf(right)) {
      Json typed;
      typed.set(fact.key, *whole.find(fact.key));
      const auto now = overlaid(Body(T()), typed, "now");
      if (fact.stays) {
        EXPECT_THAT(now, FailsWith(ErrorCode::InvalidInput, HasSubstr(fact.key)))
            << T::kKind << "." << fact.key;
        continue;
      }
      ASSERT_THAT(now, IsOk()) << T::kKind << "." << fact.key;
      const Json said = bodyToJson(*now);
      ASSERT_NE(said.find(fact.key), nullptr);
      EXPECT_EQ(canonical(*said.find(fact.key)), canonical(*typed.find(fact.key)));
      ++corrected;
    }
  });
  EXPECT_GT(corrected, 30u);
}

/// Before its last entry each job still takes a correction; each kind is corrected or refused by its own
/// rule.
TEST(EveryKind, IsCorrectedOrRefusedInAJobByItsRule) {
  KindsSeen seen;
  for (const Job& whole : jobs()) {
    Job job = *emptyJob(whole.shop, whole.id, whole.sheetBytes);
    for (const Kept& kept : whole.entries) {
      apply(job, *judge(job, kept.entry, From::Chain));
      if (job.ended() || job.paused) continue;
      Entry entry = kept.entry;
      const Voucher* author = entry.voucher(entry.enteredBy.text);
      entry.sequence = job.count() + 1, entry.by = {{entry.enteredBy, ""}}, entry.supervisor = {},
      entry.done = {};
      entry.vouchers = {Voucher(*author)};
      entry.vouchers[0].how = Vouch::Pin;
      entry.body = Corrected{kept.entry.sequence, Json(Json::Object{}), "a slip"};
      const auto judged = judge(job, entry, From::Line);
      if (isCorrectable(kept.entry.body))
        EXPECT_THAT(judged, FailsWith(ErrorCode::InvalidInput, HasSubstr("says already")))
            << kindOf(kept.entry.body);
      else
        EXPECT_THAT(judged, FailsWith(ErrorCode::NotPermitted, HasSubstr("is not corrected")))
            << kindOf(kept.entry.body);
      seen.in("correction", kept.entry.body);
    }
  }
  EXPECT_THAT(seen.missing("correction", {"paused", "called-off", "finished"}), IsEmpty());
}

TEST(EveryKind, HappensWithEveryFieldInTheJobsThatArePlayed) {
  std::set<std::string> happened, missing;
  for (const Job& job : jobs())
    for (const Kept& kept : job.entries) {
      const Json body = bodyToJson(kept.entry.body);
      for (const auto& [key, value] : *body.object())
        happened.insert(std::string(kindOf(kept.entry.body)) + "." + key);
    }
  forEachKind([&]<class T>() {
    for (const FieldFact& fact : fieldsOf(T()))
      if (const std::string field = std::string(T::kKind) + "." + fact.key; !happened.contains(field))
        missing.insert(field);
  });
  EXPECT_THAT(missing, IsEmpty());
}

TEST(EveryKind, IsAppendedLoadedSealedVerifiedAndReadBack) {
  KindsSeen seen;
  const PublicKey key = publicOf(steadyKey());
  for (const Job& job : jobs()) {
    Job loaded = *emptyJob(job.shop, job.id, job.sheetBytes);
    for (const Kept& kept : job.entries) {
      seen.in("append", kept.entry.body);
      const auto read = entryFromJson(*parseJson(canonical(entryToJson(kept.entry))), "entry");
      ASSERT_THAT(read, IsOk());
      EXPECT_EQ(read->body, kept.entry.body);
      EXPECT_EQ(read->vouchers, kept.entry.vouchers);
      auto judged = judge(loaded, *read, From::Chain);
      ASSERT_THAT(judged, IsOk()) << kindOf(kept.entry.body);
      apply(loaded, *std::move(judged));
      EXPECT_EQ(loaded.head, kept.hash);
      seen.in("load", kept.entry.body);
    }
    const auto sealed = sealRecord(job, Bench().context(), steadyKey());
    if (job.calledOff) {
      EXPECT_THAT(sealed, FailsWith(ErrorCode::OutOfTurn));
      continue;
    }
    ASSERT_THAT(sealed, IsOk());
    const Verification found = verifyRecord(*sealed, key);
    for (const Finding& finding : found.problems) ADD_FAILURE() << sentence(finding);
    const auto record = readRecord(*sealed);
    ASSERT_THAT(record, IsOk());
    ASSERT_EQ(record->job.entries.size(), job.entries.size());
    for (std::size_t i = 0; i < job.entries.size(); ++i) {
      EXPECT_EQ(record->job.entries[i].entry.body, job.entries[i].entry.body);
      EXPECT_EQ(record->job.entries[i].overtaken, job.entries[i].overtaken);
      seen.in("sealed", record->job.entries[i].entry.body);
      for (const std::string& sign : namedIn(job.entries[i].entry).people)
        EXPECT_TRUE(std::any_of(record->people.begin(), record->people.end(), [&](const Person& person) {
          return person.sign == sign;
        })) << sign;
    }
  }
  EXPECT_THAT(seen.missing("append"), IsEmpty());
  EXPECT_THAT(seen.missing("load"), IsEmpty());
  EXPECT_THAT(seen.missing("sealed", {"called-off"}), IsEmpty());
}

struct DerivedKeys {
  std::vector<std::string> keys;
  template <class T>
  void operator()(std::string_view key, const Derived<T>&) {
    keys.emplace_back(key);
  }
  template <class T>
  void operator()(std::string_view, const T&) {}
};

TEST(EveryKind, IsRefusedInAChainWhereWhatIsWorkedOutDoesNotFollow) {
  std::set<std::string> altered;
  for (const Job& whole : jobs()) {
    Job job = *emptyJob(whole.shop, whole.id, whole.sheetBytes);
    for (const Kept& kept : whole.entries) {
      std::visit(
          [&]<class T>(const T& body) {
            const Json other = bodyToJson(filled<T>());
            DerivedKeys derived;
            T::fields(body, derived);
            for (const std::string& field : derived.keys) {
              Entry forged = kept.entry;
              Json json = bodyToJson(body);
              json.set(field, *other.find(field));
              if (*json.find(field) == Json(true) && bodyToJson(body).find(field) != nullptr)
                json.set(field, false);
              forged.body = *bodyFromJson(T::kKind, json, "body", From::Chain);
              EXPECT_FALSE(judge(job, forged, From::Chain)) << T::kKind << "." << field;
              altered.insert(std::string(T::kKind) + "." + field);
            }
          },
          kept.entry.body);
      apply(job, *judge(job, kept.entry, From::Chain));
    }
  }
  forEachKind([&]<class T>() {
    DerivedKeys derived;
    const T none;
    T::fields(none, derived);
    for (const std::string& field : derived.keys)
      EXPECT_TRUE(altered.contains(std::string(T::kKind) + "." + field)) << T::kKind << "." << field;
  });
}

}  // namespace
}  // namespace cw
