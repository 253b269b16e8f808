#pragma once
#include <optional>
#include <string_view>
#include <vector>

#include "core/record/job.h"

namespace cw {

/// How a shop lead's word must be given where work goes on otherwise than the sheet says.
enum class Given {
  HereOrByPhone,  ///< a shop lead, who may have said so by phone
  Here,           ///< a shop lead who gave the PIN
};

/// How the word that `body` rests on must be given, at this moment of step `step`; nothing where it needs
/// none. A wrench and gaps need one only where they are refused, which their own rules say.
std::optional<Given> wordFor(const Job& job, std::size_t step, const StepProgress& progress,
                             const Body& body);
/// The same for the step that the body speaks of, or, where it names none, the one whose turn it is.
std::optional<Given> wordFor(const Job& job, const Body& body);

/// Does entry `sequence` rest on a word of this person's that others wrote down?
bool restsOnWordOf(const Job& job, int sequence, std::string_view sign);

/// The entries that do, and that nobody has confirmed yet; rising.
std::vector<int> unconfirmedWordsOf(const Job& job, std::string_view sign);

/// Everybody who has such words in the job, by their signs, each once.
std::vector<std::string> unconfirmedPeople(const Job& job);

}  // namespace cw
