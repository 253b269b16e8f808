#include "app/records/kept_record.h"

#include <QCoreApplication>

#include "app/common/wording.h"
#include "app/print/record_pdf.h"
#include "core/record/pdf_seal.h"
#include "core/report/record_document.h"

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
  const QString reason = worded(firstFault(found));
  if (found.firstBadEntry)
    return RecordText::tr("No. The first bad entry is %1: %2").arg(*found.firstBadEntry).arg(reason);
  if (found.firstBadAddendum && toQt(firstFault(found).place).startsWith(QLatin1String("addendum")))
    return RecordText::tr("No. The first bad addendum is %1: %2").arg(*found.firstBadAddendum).arg(reason);
  return RecordText::tr("No. %1").arg(reason.left(1).toUpper() + reason.mid(1));
}

Result<SecretKey> shopKey(Workspace& workspace) {
  CW_TRY(key, workspace.secretKey());
  const PublicKey& own = workspace.shop().identity().key;
  if (publicOf(key) == own) return key;
  return fail(ErrorCode::NotPermitted, "key", keyId(publicOf(key)),
              {"the key at hand is %1, not this shop's", {keyId(publicOf(key))}},
              {"bring the shop's key, %1", {keyId(own)}});
}

}  // namespace

Result<KeptRecord> keptRecord(Workspace& workspace, const JobRow& row) {
  if (row.state != JobState::Sealed) return unsealed(workspace, row);
  KeptRecord out;
  out.row = row;
  CW_TRY(files, workspace.shop().records().files(row.job));
  CW_TRY(read, readRecord(files.record));
  std::vector<Addendum> parsed;
  for (const std::string& bytes : files.addenda) {
    CW_TRY(addendum, readAddendum(bytes));
    parsed.push_back(std::move(addendum));
  }
  out.content = contentOf(read, parsed, inWindow);
  out.record = std::move(files.record);
  out.addenda = std::move(files.addenda);
  return out;
}

SealAnswer verifyKept(const KeptRecord& kept, const PublicKey& key) {
  const Verification found = verifySealed(kept.record, kept.addenda, key);
  if (!found.good()) return {false, because(found), unsoundStamp(found, inWindow)};
  return {true, RecordText::tr("Yes. All %1 entries are as they were sealed with this shop's key %2.")
                    .arg(found.count)
                    .arg(toQt(found.keyId))};
}

RecordPages recordPages(Workspace& workspace, const KeptRecord& kept, PageSize size, const Stamp& stamp) {
  RecordPages out;
  out.pdf = recordPdf(kept.content, {kept.record, kept.addenda}, size, stamp).toStdString();
  if (!kept.sealed()) return out;
  if (!stamp.words.empty()) {
    out.standing = RecordText::tr("Every page says that it does not verify; it is not signed.");
    return out;
  }
  const auto key = shopKey(workspace);
  if (!key) {
    out.standing = RecordText::tr("Its pages are not signed, only the data inside is. %1")
                       .arg(wordedWithPlace(key.error()));
    return out;
  }
  out.pdf = sealPdf(std::move(out.pdf), *key);
  out.standing = RecordText::tr("Every byte of it is signed with this shop's key.");
  return out;
}

}  // namespace cw
