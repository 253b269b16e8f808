#pragma once
#include <QCoreApplication>
#include <QThread>
#include <memory>
#include <optional>
#include <type_traits>

namespace cw {

/// Does `work` on a thread of its own and hands its answer to `then` on the thread of `context`, if that
/// still lives. The program waits for it at its end.
template <class Work, class Then>
void inBackground(QObject* context, Work work, Then then) {
  using Answer = std::invoke_result_t<Work>;
  auto answer = std::make_shared<std::optional<Answer>>();
  QThread* thread = QThread::create([answer, work = std::move(work)] { answer->emplace(work()); });
  QObject::connect(thread, &QThread::finished, context, [answer, then = std::move(then)] { then(**answer); });
  QObject::connect(thread, &QThread::finished, thread, &QObject::deleteLater);
  QObject::connect(QCoreApplication::instance(), &QCoreApplication::aboutToQuit, thread,
                   [thread] { thread->wait(); });
  thread->start();
}

}  // namespace cw
