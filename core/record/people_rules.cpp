#include "core/record/people_rules.h"

namespace cw {
namespace {

bool isTheProgramsOwn(const Body& body) {
  return std::holds_alternative<ClockWentBack>(body) || std::holds_alternative<ToolStopped>(body);
}

bool mayWork(const Voucher& person) {
  return person.may(Role::Technician) || person.may(Role::ShopLead) || person.may(Role::Inspector);
}

/// One voucher for each person named, in the order of their signs, and no other.
Result<void> checkVouchers(const Entry& entry) {
  auto voucher = entry.vouchers.begin();
  for (const std::string& person : namedIn(entry).people) {
    if (voucher == entry.vouchers.end() || voucher->person != person)
      return fail(ErrorCode::InvalidInput, "vouched", person,
                  {"it is not said how %1 vouches for this", {shown(person)}}, "leave that to the program");
    ++voucher;
  }
  if (voucher == entry.vouchers.end()) return {};
  return fail(ErrorCode::InvalidInput, "vouched", voucher->person,
              {"“%1” vouches twice, or for nothing", {shown(voucher->person)}}, "leave that to the program");
}

Result<void> checkHow(const Job& job, const Entry& entry) {
  const Named body = namedIn(entry.body);
  for (const Voucher& each : entry.vouchers) {
    if (each.how == Vouch::Session && !job.signedIn.contains(each.person))
      return fail(ErrorCode::NotPermitted, each.person == entry.enteredBy ? "entered_by" : "vouched",
                  each.person, {"%1 has not signed in", {each.name}}, "sign in with name and PIN first");
    const bool atWork = each.person == entry.enteredBy || each.person == entry.supervisor;
    if (each.how == Vouch::Session && !atWork)
      return fail(ErrorCode::InvalidInput, "vouched", each.person,
                  {"a session of %1's says nothing about this entry", {each.name}},
                  "let them give the PIN for it");
    const bool asked = body.people.contains(each.person) && !atWork;
    if (each.how == Vouch::Phone && !asked)
      return fail(ErrorCode::InvalidInput, "by_phone", each.person,
                  {"%1 is not asked for a word here", {each.name}}, "leave “by_phone” out");
  }
  return {};
}

Result<void> checkAuthor(const Entry& entry, const Voucher& author) {
  const bool byPin =
      std::holds_alternative<SignedIn>(entry.body) || std::holds_alternative<JobStarted>(entry.body);
  if (byPin && author.how != Vouch::Pin)
    return fail(ErrorCode::WrongPin, "pin", "", "the PIN is missing", "enter name and PIN");
  if (!author.here())
    return fail(ErrorCode::NotPermitted, "entered_by", entry.enteredBy.text,
                {"%1 has not signed in", {author.name}}, "sign in with name and PIN first");
  if (!mayWork(author))
    return fail(ErrorCode::NotPermitted, "entered_by", entry.enteredBy.text,
                {"%1 is neither technician, inspector nor lead", {author.name}}, "let a technician sign");
  return {};
}

Result<void> checkSupervisor(const Entry& entry, const Voucher& apprentice) {
  if (entry.supervisor.empty())
    return fail(ErrorCode::NotPermitted, "supervisor", "", {"%1 is an apprentice", {apprentice.name}},
                "name who supervised");
  const Voucher& supervisor = *entry.voucher(entry.supervisor.text);
  if (supervisor.apprentice || !mayWork(supervisor) || supervisor.person == apprentice.person)
    return fail(ErrorCode::NotPermitted, "supervisor", supervisor.person,
                {"%1 cannot supervise this", {supervisor.name}},
                "name a technician, inspector or lead who is no apprentice");
  if (!supervisor.here())
    return fail(ErrorCode::NotPermitted, "supervisor", supervisor.person,
                {"%1 has not signed in", {supervisor.name}},
                "let the supervisor sign in with name and PIN first");
  return {};
}

Result<void> checkDoers(const Entry& entry) {
  if (entry.by.empty())
    return fail(ErrorCode::InvalidInput, "by", "", "nobody did it", "name at least one person");
  for (const Doer& doer : entry.by) {
    const Voucher& person = *entry.voucher(doer.person.text);
    if (!mayWork(person))
      return fail(ErrorCode::NotPermitted, "by", person.person,
                  {"%1 is neither technician, inspector nor lead", {person.name}}, "name who did the work");
    if (person.apprentice) CW_CHECK(checkSupervisor(entry, person));
    const bool pulls =
        std::holds_alternative<ToolSet>(entry.body) || std::holds_alternative<PassCounted>(entry.body) ||
        std::holds_alternative<Tightened>(entry.body) || std::holds_alternative<CheckPassMade>(entry.body);
    if (!pulls && !doer.tool.empty())
      return fail(ErrorCode::InvalidInput, "by.tool", doer.tool.text, "no torque tool takes part in this",
                  "leave the tool out");
  }
  return {};
}

}  // namespace

Result<void> checkPeople(const Job& job, const Entry& entry) {
  CW_CHECK(checkVouchers(entry));
  if (entry.enteredBy.empty())
    return fail(ErrorCode::InvalidInput, "entered_by", "", "nobody signs this", "name who enters it");
  for (const Doer& doer : entry.by)
    if (doer.person.empty())
      return fail(ErrorCode::InvalidInput, "by", "", "one of those who did it has no name",
                  "name each by the sign, or leave them out");
  CW_CHECK(checkHow(job, entry));
  if (isTheProgramsOwn(entry.body)) return {};
  const Voucher& author = *entry.voucher(entry.enteredBy.text);
  CW_CHECK(checkAuthor(entry, author));
  if (author.apprentice) CW_CHECK(checkSupervisor(entry, author));
  return checkDoers(entry);
}

}  // namespace cw
