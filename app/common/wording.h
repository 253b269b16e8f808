#pragma once
#include <QString>

#include "core/base/error.h"
#include "core/base/finding.h"
#include "core/base/message.h"

namespace cw {

/// UTF-8 text of core as a QString, and back.
QString toQt(std::string_view text);
std::string fromQt(const QString& text);

/// A message of core in the user's language (translation context "core").
QString worded(const Message& message);
/// The same, as core's documents ask for it.
std::string inWindow(const Message& message);

/// "problem; expected." without the place, for where the eye already is.
QString worded(const Error& error);
/// The same with its place in front.
QString wordedWithPlace(const Error& error);
QString worded(const Finding& finding);

}  // namespace cw
