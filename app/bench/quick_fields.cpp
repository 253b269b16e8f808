#include "app/bench/quick_fields.h"

#include "app/common/settings.h"
#include "app/common/wording.h"
#include "core/procedure/printed_torque.h"
#include "core/units/parse.h"

namespace cw {
namespace {

Result<std::optional<StatedTorque>> torqueIn(const QString& text, const char* place) {
  if (text.trimmed().isEmpty()) return std::optional<StatedTorque>();
  auto torque = parse<TorqueTag>(fromQt(text), Settings().decimalMark());
  if (!torque) return fail(within(place, torque.error()));
  return std::optional(*torque);
}

std::string trimmedText(const QString& text) {
  return fromQt(text.trimmed());
}

Result<std::string> filledIn(const QString& text, const char* place, Message expected) {
  if (!text.trimmed().isEmpty()) return trimmedText(text);
  return fail(ErrorCode::InvalidInput, place, "", {"“%1” is empty", {place}}, std::move(expected));
}

/// The reading that was proposed stands where nobody changed it.
Result<Specification> specificationIn(const QuickFields& fields) {
  Specification out;
  CW_TRY(printed, filledIn(fields.printed, "torque as printed", "write it to the letter"));
  CW_TRY(low, torqueIn(fields.low, "least"));
  CW_TRY(aim, torqueIn(fields.aim, "aim"));
  CW_TRY(high, torqueIn(fields.high, "most"));
  const PrintedTorque proposed = readPrinted(printed);
  const bool asProposed = low == proposed.low && aim == proposed.aim && high == proposed.high;
  if (!aim)
    return fail(ErrorCode::InvalidInput, "aim", "", {"“%1” has no torque to aim at", {shown(printed)}},
                "write what the wrench is to apply, with its unit");
  out.printed = printed;
  out.low = low, out.aim = aim, out.high = high;
  out.reading = proposed.reading == Reading::Words ? Reading::Value : proposed.reading;
  out.toleranceStated = asProposed && proposed.toleranceStated;
  out.why = asProposed ? proposed.why : "Read so at the bench by " + fields.by + ".";
  out.condition = fromQt(fields.condition);
  return out;
}

}  // namespace

Result<QuickJoint> readQuickFields(const QuickFields& fields, Layout layout, bool drawnToScale) {
  QuickJoint out;
  CW_TRY(name, filledIn(fields.name, "what is tightened", "name the joint, such as “pump cover”"));
  CW_TRY(thread, filledIn(fields.thread, "thread", "write it as M8 or 3/8-16"));
  CW_TRY(specification, specificationIn(fields));
  CW_TRY(document,
         filledIn(fields.document, "document", "name the manual or bulletin that prints the torque"));
  CW_TRY(page, filledIn(fields.page, "page", "write the page that prints the torque"));
  out.name = name;
  out.layout = std::move(layout);
  out.drawnToScale = drawnToScale;
  out.fastener.thread = thread;
  out.fastener.grade = trimmedText(fields.grade);
  out.fastener.ungrounded = fields.ungrounded;
  out.specification = std::move(specification);
  out.source.document = document;
  out.source.page = page;
  out.source.revision = trimmedText(fields.revision);
  out.passes = fields.passes;
  out.by = fields.by;
  return out;
}

}  // namespace cw
