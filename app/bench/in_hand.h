#pragma once

class QStackedWidget;

namespace cw {

class Navigator;

/// When Figures is opened from the bench, it gets the specification of the step that is up, and its fastener.
void offerInHand(QStackedWidget& bench, Navigator& navigator);

}  // namespace cw
