#include "app/records/kept_record.h"

#include <QCoreApplication>

#include "app/common/wording.h"

namespace cw {
namespace {

struct RecordText {
  Q_DECLARE_TR_FUNCTIONS(KeptRecord)
};

Result<KeptRecord> unsealed(Workspace& workspace, const JobRow& row) {
  CW_TRY(job, workspace.shop().ledger().refresh(row.job));
  CW_TRY(floor, workspace.shop().ledger().floor());
  return KeptRecord{row, contentOf(*job, floor, workspace.shop().identity().name, inWindow), {}, {}};
}

QString because(const Verification& found) {
  const QString reason = worded(found.problems.front());
  return found.firstBadEntry
             ? RecordText::tr("No. The first bad entry is %1: %2").arg(*found.firstBadEntry).arg(reason)
             : RecordText::tr("No. %1").arg(reason.left(1).toUpper() + reason.mid(1));
}

}  // namespace

Result<KeptRecord> keptRecord(Workspace& workspace, const JobRow& row) {
  if (row.state != JobState::Sealed) return unsealed(workspace, row);
  KeptRecord out;
  out.row = row;
  CW_TRY(record, workspace.shop().records().bytes(row.job));
  CW_TRY(addenda, workspace.shop().records().addenda(row.job));
  CW_TRY(read, readRecord(record));
  std::vector<Addendum> parsed;
  for (const std::string& bytes : addenda) {
    CW_TRY(addendum, readAddendum(bytes));
    parsed.push_back(std::move(addendum));
  }
  out.content = contentOf(read, parsed, inWindow);
  out.record = std::move(record);
  out.addenda = std::move(addenda);
  return out;
}

SealAnswer verifyKept(const KeptRecord& kept, const PublicKey& key) {
  const Verification record = verifyRecord(kept.record, key);
  if (!record.good()) return {false, because(record)};
  const Verification addenda = verifyAddenda(kept.record, kept.addenda, key);
  if (!addenda.good()) return {false, because(addenda)};
  return {true, RecordText::tr("Yes. All %1 entries are as they were sealed with this shop's key %2.")
                    .arg(record.count)
                    .arg(toQt(record.keyId))};
}

}  // namespace cw
