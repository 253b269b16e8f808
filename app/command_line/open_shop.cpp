#include "app/command_line/open_shop.h"

#include <istream>

#include "core/store/file_io.h"
#include "core/store/pin_gate.h"

namespace cw {

Result<std::unique_ptr<Shop>> openShop(const Options& options, Clock& clock) {
  if (options.shopFile.empty())
    return fail(ErrorCode::InvalidInput, "--shop", "", "no shop file was named", "add --shop FILE");
  return Shop::open(options.shopFile, clock);
}

Result<Catalogue> catalogueOf(const Options& options) {
  if (options.shopFile.empty()) return shippedCatalogue();
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  return shop->library().catalogue().map([](const Catalogue* catalogue) { return *catalogue; });
}

Result<std::string> readPin(const std::string& file, Terminal& terminal) {
  std::string pin;
  if (file == "-") {
    std::getline(terminal.in, pin);
  } else {
    CW_TRY(bytes, readFile(file, 1024));
    pin = bytes.substr(0, bytes.find('\n'));
  }
  if (pin.ends_with('\r')) pin.pop_back();
  if (pin.empty())
    return fail(ErrorCode::InvalidInput, "--pin-file", file, "there is no PIN in it",
                "write it on the first line");
  return pin;
}

Result<Deed> signedDeed(Shop& shop, Clock& clock, const std::string& sign, const std::string& pinFile,
                        Terminal& terminal) {
  CW_TRY(pin, readPin(pinFile, terminal));
  CW_CHECK(PinGate(shop.database(), shop.people()).check(sign, pin, Id(), clock.now()));
  return Deed{sign, clock.now()};
}

}  // namespace cw
