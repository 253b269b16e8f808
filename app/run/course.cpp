#include "app/run/course.h"

#include "app/common/wording.h"

namespace cw {

Course::Course(Id job, Worker worker, QObject* parent)
    : QObject(parent), m_id(std::move(job)), m_worker(std::move(worker)) {}

bool Course::settled(const Result<void>& answer) {
  if (answer) {
    emit changed();
    return true;
  }
  // Somebody else was first: what they entered is shown, and then said.
  if (answer.error().code == ErrorCode::Conflict) emit changed();
  emit refused(worded(answer.error()));
  return false;
}

}  // namespace cw
