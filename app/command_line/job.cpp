#include <CLI/CLI.hpp>
#include <istream>
#include <memory>
#include <ostream>

#include "app/command_line/commands.h"
#include "app/command_line/job_enter.h"
#include "app/command_line/open_shop.h"
#include "core/base/printable.h"
#include "core/procedure/applicability.h"
#include "core/record/key.h"
#include "core/record/verify.h"
#include "core/store/file_io.h"
#include "core/store/records.h"

namespace cw {
namespace {

struct StartOptions {
  std::string sheet, quick, allowedBy, allowedWhy, fitAllowedBy, fitWhy, workOrder, machine, reason, parent,
      hours, by, pinFile = "-", supervisor, supervisorPinFile;
  bool byPhone = false;
};

/// The issued revision of a sheet, or the file of a quick joint.
Result<void> chooseSheet(const StartOptions& start, Shop& shop, Beginning& beginning) {
  if (!start.quick.empty()) {
    CW_TRY(bytes, readFile(start.quick));
    beginning.quickSheet = bytes;
    return {};
  }
  CW_TRY(sheetId, Id::parse(start.sheet));
  CW_TRY(row, shop.sheets().issued(sheetId));
  beginning.sheetDigest = row.digest;
  return {};
}

Result<Reply> start(const StartOptions& start, const Options& options, Terminal& terminal) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  Beginning beginning;
  CW_CHECK(chooseSheet(start, *shop, beginning));
  CW_TRY(pin, readPin(start.pinFile, terminal));
  beginning.job = Id::make(clock.now());
  beginning.entry = Id::make(clock.now());
  beginning.by = start.by;
  beginning.pin = pin;
  beginning.supervisor = start.supervisor;
  beginning.start.workOrder = start.workOrder;
  beginning.start.machine = start.machine;
  beginning.start.hours = start.hours;
  if (!start.reason.empty()) {
    CW_TRY(reason, fromWord<Reason>(start.reason, "--reason"));
    beginning.start.reason = reason;
  }
  beginning.start.parent = start.parent;
  beginning.start.guardAllowedBy = start.allowedBy;
  beginning.start.guardReason = start.allowedWhy;
  beginning.start.fitAllowedBy = start.fitAllowedBy;
  beginning.start.fitReason = start.fitWhy;
  beginning.byPhone = start.byPhone;
  if (!start.supervisorPinFile.empty()) {
    CW_TRY(supervisorPin, readPin(start.supervisorPinFile, terminal));
    beginning.others[start.supervisor] = supervisorPin;
  }
  CW_TRY(receipt, shop->ledger().start(beginning));
  Reply reply;
  reply.json.set("job", beginning.job.text()).set("sequence", receipt.sequence).set("hash", receipt.hash);
  reply.lines = {beginning.job.text()};
  CW_TRY(job, shop->ledger().job(beginning.job));
  std::string caution;
  for (const Message& doubt : applicability(job->sheet, job->start.model, job->start.serial).doubts) {
    caution += (caution.empty() ? "" : " ") + plain(doubt);
    terminal.err << "caution: " << printable(plain(doubt)) << "\n";
  }
  if (!caution.empty()) reply.json.set("caution", caution);
  return reply;
}

Result<Reply> list(int limit, const Options& options) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  JobQuery query;
  query.most = limit;
  CW_TRY(listed, shop->findJobs(query));
  Json::Array all;
  Reply reply;
  for (const JobRow& row : listed.rows) {
    Json one;
    one.set("job", row.job.text()).set("work_order", row.workOrder).set("machine", row.machine);
    one.set("sheet", row.title).set("revision", row.revision).set("state", wordOf(row.state));
    one.set("quick", row.quick);
    reply.lines.push_back(row.job.text() + "  " + row.workOrder + "  " + row.machine + "  " + row.title +
                          (row.quick ? " (no issued sheet)" : " " + row.revision) + "  " +
                          std::string(wordOf(row.state)));
    all.push_back(std::move(one));
  }
  reply.json.set("jobs", std::move(all));
  sayOfHowMany(reply, listed.rows.size(), listed.total, "jobs");
  return reply;
}

struct SealOptions {
  std::string job, secretFile, by, pinFile = "-";
};

Result<Reply> seal(const SealOptions& given, const Options& options, Terminal& terminal) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(job, Id::parse(given.job));
  CW_TRY(pin, readPin(given.pinFile, terminal));
  CW_TRY(secretText,
         readFile(given.secretFile.empty() ? options.shopFile + ".secret-key" : given.secretFile, 4096));
  CW_TRY(secret, readSecretKey(secretText));
  CW_TRY(bytes, shop->records().seal(job, {given.by, pin}, secret, CW_VERSION));
  CW_TRY(record, readRecord(bytes));
  Reply reply;
  reply.json.set("job", job.text()).set("head", hex(record.job.head)).set("count", record.job.count());
  reply.lines = {"sealed " + std::to_string(record.job.count()) + " entries, head " + hex(record.job.head)};
  return reply;
}

}  // namespace

void addJob(Commands& commands) {
  CLI::App* job = commands.program.add_subcommand("job", "Start a job, enter what was done, seal its record");
  job->require_subcommand(1);

  auto startOptions = std::make_shared<StartOptions>();
  CLI::App* startApp = job->add_subcommand("start", "Start a job by the issued revision of a sheet");
  CLI::Option_group* sheet = startApp->add_option_group("sheet");
  sheet->require_option(1);
  sheet->add_option("--sheet", startOptions->sheet, "Id of the sheet");
  sheet
      ->add_option("--quick", startOptions->quick,
                   "Sheet file of a quick joint: one joint and the step that tightens it, not issued")
      ->type_name("FILE");
  startApp->add_option("--allowed-by", startOptions->allowedBy,
                       "Lead who allows a quick joint's torque that the guard refuses");
  startApp->add_option("--allowed-why", startOptions->allowedWhy, "The lead's reason");
  startApp->add_option("--work-order", startOptions->workOrder, "Number of the work order")->required();
  startApp->add_option("--machine", startOptions->machine, "Machine as the shop calls it")->required();
  startApp->add_option("--hours", startOptions->hours, "Its hours, as read");
  startApp->add_option("--fit-allowed-by", startOptions->fitAllowedBy,
                       "Lead who allows a sheet that is for another model or serial number");
  startApp->add_option("--fit-why", startOptions->fitWhy, "The lead's reason");
  startApp->add_flag("--by-phone", startOptions->byPhone, "The lead said so by phone");
  startApp->add_option("--reason", startOptions->reason, "new-work, warranty, comeback or retorque-due");
  startApp->add_option("--parent", startOptions->parent, "Job whose record it follows from");
  startApp->add_option("--by", startOptions->by, "Sign of the technician")->required();
  startApp->add_option("--supervisor", startOptions->supervisor, "For an apprentice");
  startApp
      ->add_option("--supervisor-pin-file", startOptions->supervisorPinFile, "File with the supervisor's PIN")
      ->type_name("FILE");
  startApp->add_option("--pin-file", startOptions->pinFile, "File with the PIN; - reads standard input")
      ->type_name("FILE");
  commands.add(startApp, [startOptions](const Options& options, Terminal& terminal) {
    return start(*startOptions, options, terminal);
  });

  auto id = std::make_shared<std::string>();
  auto file = std::make_shared<std::string>();
  CLI::App* enter =
      job->add_subcommand("enter", "Enter results from a file of JSON lines; - reads standard input");
  enter->add_option("file", *file, "File of lines")->required();
  enter->add_option("--job", *id, "Id of the job")->required();
  commands.add(enter, [id, file](const Options& options, Terminal& terminal) {
    return enterLines(*id, *file, options, terminal);
  });

  auto sealing = std::make_shared<SealOptions>();
  CLI::App* sealApp = job->add_subcommand("seal", "Seal the record of a finished job");
  sealApp->add_option("--job", sealing->job, "Id of the job")->required();
  sealApp->add_option("--by", sealing->by, "Sign of who seals")->required();
  sealApp->add_option("--pin-file", sealing->pinFile, "File with the PIN; - reads standard input")
      ->type_name("FILE");
  sealApp->add_option("--secret", sealing->secretFile, "Secret key file; by default beside the shop file")
      ->type_name("FILE");
  commands.add(sealApp, [sealing](const Options& options, Terminal& terminal) {
    return seal(*sealing, options, terminal);
  });

  auto limit = std::make_shared<int>(kListed);
  CLI::App* listApp = job->add_subcommand("list", "List jobs, the latest first");
  addLimit(listApp, *limit);
  commands.add(listApp, [limit](const Options& options, Terminal&) { return list(*limit, options); });
}

}  // namespace cw
