#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/record_export.h"
#include "app/command_line/record_verify.h"
#include "core/record/verify.h"
#include "core/store/file_io.h"
#include "core/store/found_shop.h"

namespace cw {
namespace {

struct RecordOptions {
  std::string job, words, by, pinFile = "-", text, secret;
  int limit = kListed;
};

Result<Reply> list(const RecordOptions& given, const Options& options) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  JobQuery query;
  query.words = given.words;
  query.states = {JobState::Sealed};
  query.most = given.limit;
  CW_TRY(listed, shop->findJobs(query));
  Reply reply;
  Json::Array all;
  for (const JobRow& row : listed.rows) {
    Json one;
    one.set("job", row.job.text())
        .set("work_order", row.workOrder)
        .set("machine", row.machine)
        .set("serial", row.serial);
    one.set("sheet", row.title).set("revision", row.revision).set("head", row.head).set("count", row.entries);
    one.set("addenda", row.addenda);
    reply.lines.push_back(row.job.text() + "  " + row.workOrder + "  " + row.machine + "  " + row.title +
                          " rev " + row.revision);
    all.push_back(std::move(one));
  }
  reply.json.set("records", std::move(all));
  sayOfHowMany(reply, listed.rows.size(), listed.total, "records");
  return reply;
}

Result<Reply> addAddendum(const RecordOptions& given, const Options& options, Terminal& terminal) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(job, Id::parse(given.job));
  CW_TRY(secretText,
         readFile(given.secret.empty() ? usualKeyFile(options.shopFile).string() : given.secret, 4096));
  CW_TRY(secret, readSecretKey(secretText));
  CW_TRY(pin, readPin(given.pinFile, terminal));
  CW_TRY(bytes, shop->records().addAddendum(job, given.by, pin, given.text, secret));
  CW_TRY(addendum, readAddendum(bytes));
  Reply reply;
  reply.json.set("job", job.text()).set("number", addendum.number);
  reply.lines = {"sealed addendum " + std::to_string(addendum.number)};
  return reply;
}

}  // namespace

void addRecord(Commands& commands) {
  CLI::App* record = commands.program.add_subcommand("record", "List, verify and hand over sealed records");
  record->require_subcommand(1);
  auto given = std::make_shared<RecordOptions>();

  addRecordVerify(commands, record);

  CLI::App* listApp = record->add_subcommand("list", "List sealed records");
  listApp->add_option("--find", given->words,
                      "Beginnings of words of work order, machine, model, serial or title");
  addLimit(listApp, given->limit);
  commands.add(listApp, [given](const Options& options, Terminal&) { return list(*given, options); });

  addRecordExport(commands, record);

  CLI::App* addApp = record->add_subcommand(
      "addendum", "Seal what turned out later; it is shown and printed with the record");
  addApp->add_option("--job", given->job, "Id of the job")->required();
  addApp->add_option("--text", given->text, "What turned out, and what it is now")->required();
  addApp->add_option("--by", given->by, "Sign of the person who says so")->required();
  addApp->add_option("--pin-file", given->pinFile, "File with the PIN; - reads standard input")
      ->type_name("FILE");
  addApp->add_option("--secret", given->secret, "Secret key file; by default beside the shop file")
      ->type_name("FILE");
  commands.add(addApp, [given](const Options& options, Terminal& terminal) {
    return addAddendum(*given, options, terminal);
  });
}

}  // namespace cw
