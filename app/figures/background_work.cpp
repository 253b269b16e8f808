#include "app/figures/background_work.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace cw {

BackgroundWork::~BackgroundWork() {
  if (m_run) m_run->request_stop();
}

void BackgroundWork::start(Work work) {
  if (m_run) m_run->request_stop();
  const auto run = std::make_shared<std::stop_source>();
  m_run = run;
  emit runningChanged(true);
  const QPointer<BackgroundWork> self(this);
  const auto inWindow = [self, run](const std::function<void(BackgroundWork&)>& what) {
    const auto still = [self, run, what] {
      if (self && self->m_run == run) what(*self);
    };
    QMetaObject::invokeMethod(QCoreApplication::instance(), still, Qt::QueuedConnection);
  };
  QThreadPool::globalInstance()->start([run, inWindow, work = std::move(work)] {
    const Progress progress = [inWindow, last = -1](int thousandths) mutable {
      if (std::exchange(last, thousandths) != thousandths)
        inWindow([thousandths](BackgroundWork& shown) { emit shown.progressed(thousandths); });
    };
    const Answer answer = work(run->get_token(), progress);
    inWindow([answer](BackgroundWork& shown) {
      shown.m_run.reset();
      emit shown.runningChanged(false);
      answer();
    });
  });
}

void BackgroundWork::stop() {
  if (!m_run) return;
  m_run->request_stop();
  m_run.reset();
  emit runningChanged(false);
}

}  // namespace cw
