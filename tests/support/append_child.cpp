// The program that is killed: enters a script into a job and prints each acknowledgement once it has it.
//   append_child FILE JOB FROM COUNT CRASH-AT UNSYNCED SEED [unsafe]
// FROM: index into the script, some way before where it stopped, so that the first lines are replays.
// CRASH-AT: the write or sync at which it dies, counted from a random entry on; 0 to be killed from outside.
#include <QCoreApplication>
#include <cstdio>
#include <random>

#include "core/store/connection.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/kill_script.h"

namespace {

using namespace cw;

/// One line a moment, at once in the pipe.
void tell(const std::string& line) {
  std::fputs((line + "\n").c_str(), stdout);
  std::fflush(stdout);
}

int refuse(const Error& error) {
  tell("refused " + sentence(error));
  return 1;
}

int run(const QStringList& words) {
  const Id job = *Id::parse(words[2].toStdString());
  const int from = words[3].toInt(), count = words[4].toInt();
  std::mt19937 random(words[7].toUInt());
  test::installFaultVfs(static_cast<test::Unsynced>(words[6].toInt()), words[7].toUInt());
  SystemClock clock;
  auto shop = Shop::open(words[1].toStdString(), clock);
  if (!shop) return refuse(shop.error());
  if (words.size() > 8) static_cast<void>((*shop)->database().connection().run("PRAGMA synchronous = off"));
  for (const char* sign : {"mira", "otto"}) {
    const Id id = Id::make(clock.now());
    if (auto in = (*shop)->ledger().signIn(job, sign, test::kPin, id); !in)
      return refuse(in.error());
    else
      tell("ack " + id.text() + " " + std::to_string(in->sequence) + " " + in->hash);
  }
  const int armed = from + static_cast<int>(random() % 8);
  for (int index = from; index < from + count; ++index) {
    const Draft draft = test::scriptedDraft(index);
    if (index == armed) test::crashAtOperation(words[5].toInt());
    tell("begin " + draft.id.text());
    const auto receipt = (*shop)->ledger().append(job, draft);
    if (!receipt) return refuse(receipt.error());
    tell("ack " + draft.id.text() + " " + std::to_string(receipt->sequence) + " " + receipt->hash);
  }
  tell("end");
  return 0;
}

}  // namespace

int main(int count, char** words) {
  const QCoreApplication application(count, words);
  return run(QCoreApplication::arguments());
}
