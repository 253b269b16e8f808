#pragma once
#include <string>
#include <vector>

#include "app/common/workspace.h"
#include "core/record/verify.h"
#include "core/report/content.h"

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
};
SealAnswer verifyKept(const KeptRecord& kept, const PublicKey& key);

}  // namespace cw
