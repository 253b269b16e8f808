#pragma once
#include "core/store/connection.h"
#include "core/store/shop_identity.h"

namespace cw {

/// Corrupt unless this is a shop file; NewerVersion if its schema is above ours.
Result<void> checkIdentity(Connection& connection);

/// The shop that the file belongs to; Corrupt without one.
Result<ShopIdentity> readIdentity(Connection& connection);

}  // namespace cw
