#pragma once
#include <string>
#include <vector>

#include "app/common/workspace.h"
#include "app/print/paper.h"
#include "core/record/verify.h"
#include "core/report/content.h"
#include "core/report/document.h"

namespace cw {

/// One job of the list, read for showing: its content, and its sealed files if it is sealed.
struct KeptRecord {
  JobRow row;
  RecordContent content;
  std::string record;                ///< sealed bytes; empty until sealed
  std::vector<std::string> addenda;  ///< sealed bytes, in their order

  bool sealed() const { return !record.empty(); }
};

/// Reads it from the shop, worded for the window. Errors of Records and of Ledger.
Result<KeptRecord> keptRecord(Workspace& workspace, const JobRow& row);

/// Record and addenda held against the shop's own public key.
struct SealAnswer {
  bool yes = false;
  QString sentence;
  Stamp stamp{};  ///< for its pages, where the answer is no
};
SealAnswer verifyKept(const KeptRecord& kept, const PublicKey& key);

/// A record as pages.
struct RecordPages {
  std::string pdf;
  QString standing;  ///< whether its bytes are signed, and why not; empty for a job that is not sealed
};

/// The pages to hand over, with the stamp across each of them if there is one. Those of a sealed record that
/// is sound are signed where the shop's secret key is at hand.
RecordPages recordPages(Workspace& workspace, const KeptRecord& kept, PageSize size, const Stamp& stamp);

}  // namespace cw
