#include "core/store/records.h"

#include "core/base/digest.h"
#include "core/base/found.h"
#include "core/record/seal.h"
#include "core/record/verify.h"
#include "core/store/connection.h"
#include "core/store/database.h"
#include "core/store/ledger.h"
#include "core/store/people.h"
#include "core/store/shop_identity.h"

namespace cw {
namespace {

/// What does not verify is never stored.
Result<void> checkGood(const Verification& verification, const Id& job) {
  if (verification.good()) return {};
  return fail(ErrorCode::Corrupt, "job " + job.text(), "",
              {"it would not verify: %1", {sentence(verification.problems.front())}},
              "inspect the shop file");
}

}  // namespace

Records::Records(Database& database, const ShopIdentity& shop, People& people, Ledger& ledger, Clock& clock)
    : m_database(database),
      m_shop(shop),
      m_people(people),
      m_ledger(ledger),
      m_clock(clock),
      m_gate(database, people) {}

Result<std::string> Records::seal(const Id& id, const Sealer& by, const SecretKey& key,
                                  const std::string& program) {
  CW_CHECK(checkKey(key));
  CW_TRY(voucher, sealer(id, by));
  CW_TRY(transaction, Transaction::begin(m_database.connection()));
  CW_TRY(before, ifFound(bytes(id)));
  if (before)
    return fail(ErrorCode::AlreadyDone, "job " + id.text(), "", "its record is sealed already",
                "export it, or add an addendum");
  CW_TRY(record, make(id, voucher, key, program));
  CW_TRY(job, m_ledger.job(id));
  CW_CHECK(m_database.connection().run(
      "INSERT INTO record(job, bytes, digest, head, count, sealed) VALUES (?, ?, ?, ?, ?, ?)",
      {id.text(), Blob{record}, hex(sha256(record)), hex(job->head), job->count(),
       rfc3339({m_clock.now().utc, std::chrono::minutes{0}})}));
  CW_CHECK(transaction.commit());
  return record;
}

Result<Voucher> Records::sealer(const Id& job, const Sealer& by) {
  CW_TRY(person,
         m_people.require(by.sign, {Role::Technician, Role::ServiceWriter, Role::Inspector, Role::ShopLead}));
  Voucher out{person.sign, person.name, person.roles, person.apprentice, Vouch::Written};
  if (by.pin) {
    CW_CHECK(m_gate.check(by.sign, *by.pin, job, m_clock.now()));
    out.how = Vouch::Pin;
  } else {
    CW_TRY(signedIn, m_ledger.isSignedIn(job, by.sign));
    if (signedIn) out.how = Vouch::Session;
  }
  CW_CHECK(maySeal(out));
  return out;
}

Result<std::string> Records::make(const Id& id, const Voucher& by, const SecretKey& key,
                                  const std::string& program) {
  CW_TRY(job, m_ledger.refresh(id));
  CW_TRY(record, sealRecord(*job, {m_shop.name, program, by, m_clock.now()}, key));
  CW_CHECK(checkGood(verifyRecord(record, m_shop.key), id));
  return std::move(record);
}

Result<void> Records::checkKey(const SecretKey& key) const {
  if (publicOf(key) == m_shop.key) return {};
  return fail(ErrorCode::NotPermitted, "key", keyId(publicOf(key)),
              {"this is the key %1, not that of %2", {keyId(publicOf(key)), m_shop.name}},
              {"bring the shop's key, %1", {keyId(m_shop.key)}});
}

Result<std::string> Records::bytes(const Id& job) {
  CW_TRY(record, first(m_database.connection(), "SELECT bytes FROM record WHERE job = ?", {job.text()},
                       [](const SqlRows& row) { return row.bytes(0); }));
  if (record) return *std::move(record);
  return fail(ErrorCode::NotFound, "job", job.text(), {"there is no sealed record of job %1", {job.text()}},
              "finish and seal the job first");
}

Result<KeptFiles> Records::files(const Id& job) {
  const Snapshot moment(m_database.connection());
  CW_CHECK(moment.begun());
  CW_TRY(record, bytes(job));
  CW_TRY(addenda, collect(m_database.connection(), "SELECT bytes FROM addendum WHERE job = ? ORDER BY number",
                          {job.text()}, [](const SqlRows& row) { return row.bytes(0); }));
  return KeptFiles{std::move(record), std::move(addenda)};
}

Result<std::string> Records::addAddendum(const Id& job, const std::string& sign, std::string_view pin,
                                         const std::string& text, const SecretKey& key) {
  CW_CHECK(checkKey(key));
  if (text.find_first_not_of(" \t\n") == std::string::npos)
    return fail(ErrorCode::InvalidInput, "text", "", "the addendum says nothing",
                "write what turned out, and what it is now");
  const Moment now = m_clock.now();
  CW_TRY(person,
         m_people.require(sign, {Role::Technician, Role::ServiceWriter, Role::Inspector, Role::ShopLead}));
  CW_CHECK(m_gate.check(sign, pin, job, now));

  CW_TRY(transaction, Transaction::begin(m_database.connection()));
  CW_TRY(sealed, files(job));
  auto& [record, all] = sealed;
  const Addendum addendum{static_cast<int>(all.size()) + 1, sign, person.name, now, text};
  const std::string made = sealAddendum(addendum, record, all.empty() ? record : all.back(), job, key);
  all.push_back(made);
  CW_CHECK(checkGood(verifyAddenda(record, all, m_shop.key), job));
  CW_CHECK(m_database.connection().run("INSERT INTO addendum(job, number, bytes) VALUES (?, ?, ?)",
                                       {job.text(), addendum.number, Blob{made}}));
  CW_CHECK(transaction.commit());
  return made;
}

Result<void> Records::dispose(const Id& job, const Deed& deed) {
  CW_CHECK(m_people.require(deed.by, {Role::ShopLead}));
  if (deed.remark.find_first_not_of(" \t\n") == std::string::npos)
    return fail(ErrorCode::InvalidInput, "reason", "", "there is no reason", "write why it is disposed of");
  Connection& connection = m_database.connection();
  CW_TRY(transaction, Transaction::begin(connection));
  CW_CHECK(m_ledger.refresh(job));
  CW_CHECK(connection.run("INSERT INTO disposal(job, at, by, reason) VALUES (?, ?, ?, ?)",
                          {job.text(), rfc3339(deed.at), deed.by, deed.remark}));
  for (const char* table : {"addendum", "record", "entry"})
    CW_CHECK(connection.run("DELETE FROM " + std::string(table) + " WHERE job = ?", {job.text()}));
  return transaction.commit();
}

}  // namespace cw
