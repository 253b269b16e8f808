#include "app/bench/in_hand.h"

#include <QStackedWidget>

#include "app/common/navigator.h"
#include "app/run/run_panel.h"

namespace cw {
namespace {

/// Of the position in turn; of the joint where none is.
void sendInHand(const Job& job, Navigator& navigator) {
  const Next coming = next(job);
  if (coming.step >= job.sheet.steps.size()) return;
  const Joint* joint = job.sheet.joint(job.sheet.steps[coming.step].joint);
  if (joint == nullptr) return;
  const bool one = !coming.position.empty();
  const auto* specification =
      job.sheet.specification(one ? joint->specificationAt(coming.position) : joint->specification);
  const auto* fastener = job.sheet.fastener(one ? joint->fastenerAt(coming.position) : joint->fastener);
  if (specification != nullptr && fastener != nullptr) navigator.openFigures(*specification, *fastener);
}

}  // namespace

void offerInHand(QStackedWidget& bench, Navigator& navigator) {
  QObject::connect(&navigator, &Navigator::inHandWanted, &bench, [&bench, &navigator](const QString& place) {
    const auto* run = qobject_cast<RunPanel*>(bench.currentWidget());
    if (place != QLatin1String("bench") || run == nullptr || run->course() == nullptr) return;
    if (const Job* job = run->course()->job()) sendInHand(*job, navigator);
  });
}

}  // namespace cw
