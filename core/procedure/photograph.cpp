#include "core/procedure/photograph.h"

#include "core/base/base64.h"
#include "core/base/digest.h"

namespace cw {

Result<Photograph> photograph(std::string name, std::string bytes) {
  // ISO/IEC 10918-1 (start of image) and ISO/IEC 15948, 5.2 (signature).
  const bool isPicture = bytes.starts_with("\xFF\xD8\xFF") || bytes.starts_with("\x89PNG\r\n\x1A\n");
  if (!isPicture)
    return fail(ErrorCode::InvalidInput, "photograph", name,
                {"“%1” is neither a JPEG nor a PNG file", {shown(name)}}, "choose the picture itself");
  if (bytes.size() > kMostPhotographBytes)
    return fail(ErrorCode::OutOfRange, "photograph", name,
                {"“%1” is larger than a record should carry", {shown(name)}},
                {"take one of at most %1 MiB", {std::to_string(kMostPhotographBytes >> 20)}});
  return Photograph{std::move(name), std::move(bytes)};
}

Json photographToJson(const Photograph& photograph) {
  Json out;
  out.set("name", photograph.name).set("sha256", hex(sha256(photograph.bytes)));
  out.set("bytes", toBase64(photograph.bytes));
  return out;
}

Result<Photograph> photographFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  CW_TRY(name, reader.nonEmpty("name"));
  CW_TRY(digest, reader.text("sha256"));
  CW_TRY(text, reader.text("bytes"));
  CW_CHECK(reader.nothingElse());
  auto bytes = fromBase64(text);
  if (!bytes) return fail(within(reader.placeOf("bytes"), bytes.error()));
  if (hex(sha256(*bytes)) != digest)
    return fail(ErrorCode::InvalidInput, reader.placeOf("sha256"), digest,
                "this is not the digest of the photograph", "take the untouched file");
  auto out = photograph(name, *std::move(bytes));
  if (!out) return fail(within(place, out.error()));
  return out;
}

}  // namespace cw
