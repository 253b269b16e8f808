#include "core/record/body_fields.h"
#include "core/record/derive.h"
#include "core/record/rules.h"

namespace cw {
namespace {

/// The fields that a correction may not touch, the program's own apart.
class Stays {
 public:
  template <class T>
  void operator()(std::string_view, const Derived<T>&) {}
  template <class T>
  void operator()(std::string_view key, const T& field) {
    if constexpr (kStays<T>) m_writer(key, field);
  }
  Json take() { return m_writer.take(); }

 private:
  FieldWriter m_writer;
};

Json staysOf(const Body& body) {
  Stays stays;
  std::visit([&]<class T>(const T& b) { T::fields(b, stays); }, body);
  return stays.take();
}

Result<const Kept*> correctable(const Job& job, int of) {
  const Kept& kept = job.kept(of);
  if (!isCorrectable(kept.entry.body))
    return fail(ErrorCode::NotPermitted, "of", kindOf(kept.entry.body),
                {"an entry of kind “%1” is not corrected", {std::string(kindOf(kept.entry.body))}},
                "reopen, take apart or set aside instead");
  if (kept.overtaken)
    return fail(ErrorCode::AlreadyDone, "of", std::to_string(of),
                {"entry %1 no longer holds", {std::to_string(of)}}, "correct the entry that holds now");
  if (job.corrections >= kMostCorrections)
    return fail(ErrorCode::OutOfRange, "of", std::to_string(of),
                {"%1 entries of this job have been corrected", {std::to_string(job.corrections)}},
                "take apart and do it anew");
  return &kept;
}

/// The corrected body: a line's few fields over what holds now, or the whole that a chain brings.
Result<Body> restated(const Kept& old, const Json& now, From from) {
  if (from == From::Line) {
    if (now.object() == nullptr)
      return fail(ErrorCode::InvalidInput, "now", canonical(now), "it is not said what it should have been",
                  R"(write the fields that were wrong, for example {"value":"0.05"})");
    return overlaid(old.body(), now, "now");
  }
  CW_TRY(said, bodyFromJson(kindOf(old.entry.body), now, "now", From::Chain));
  if (staysOf(said) == staysOf(old.entry.body)) return said;
  return fail(ErrorCode::InvalidInput, "now", canonical(staysOf(said)),
              "it speaks of another step, position or person than the entry", "correct only what was read or noted");
}

}  // namespace

Result<void> speaksOfTheSame(const Job& job, const Corrected& body) {
  CW_TRY(kept, correctable(job, body.of));
  CW_TRY(now, restated(*kept, body.now, From::Chain));
  return speaksOfWhatIsThere(job, now);
}

Result<Corrected> completeCorrection(const Job& job, const Corrected& body, From from) {
  CW_TRY(kept, correctable(job, body.of));
  CW_TRY(now, restated(*kept, body.now, from));
  if (auto there = speaksOfWhatIsThere(job, now); !there) return fail(within("now", there.error()));
  const std::size_t step = stepMeant(job, now);
  const StepProgress before = foldStep(job, step, body.of);
  const Situation at{job, kept->entry, step, before};
  if (from == From::Line)
    deriveAll(now, at);
  else if (const std::string field = fieldThatDoesNotFollow(now, at); !field.empty())
    return fail(ErrorCode::InvalidInput, "now." + field, "",
                {"“%1” does not follow from the rest of the job", {field}},
                "the program works it out; it was altered");
  if (now == kept->body())
    return fail(ErrorCode::InvalidInput, "now", canonical(body.now), "this is what the entry says already",
                "write what it should have been");
  if (auto allowed = std::visit(Rules(at), now); !allowed) return fail(within("now", allowed.error()));
  return Corrected{body.of, bodyToJson(now), body.reason};
}

}  // namespace cw
