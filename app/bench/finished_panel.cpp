#include "app/bench/finished_panel.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/bench/shop_choices.h"
#include "app/common/tab_order.h"
#include "app/common/wording.h"
#include "app/documents/document_view.h"
#include "app/look/labels.h"
#include "app/look/measures.h"
#include "app/run/bench_foot.h"
#include "app/run/touch.h"
#include "core/report/record_document.h"

namespace cw {

FinishedPanel::FinishedPanel(Workspace& workspace, QWidget* parent)
    : QWidget(parent), m_workspace(workspace) {
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  auto* column = new QVBoxLayout;
  column->setContentsMargins(24, 24, 24, 0);
  column->setSpacing(8);
  QLabel* title = textLabel(tr("Look it over, then seal the record."),
                            fontOfHeight(bench::kTextHeight * 1.2, this, QFont::Bold));
  m_document = new DocumentView;
  m_document->setObjectName(QStringLiteral("finishedText"));
  m_document->setFont(fontOfHeight(bench::kLabelHeight, this));
  column->addWidget(title);
  column->addWidget(m_document, 1);
  auto* sealing = new QHBoxLayout;
  m_sealer = touchChoice(QStringLiteral("sealerChoice"));
  m_pin = new QLineEdit;
  m_pin->setObjectName(QStringLiteral("pinField"));
  m_pin->setEchoMode(QLineEdit::Password);
  fitForTouch(*m_pin);
  sealing->addWidget(labelFor(*m_sealer, tr("Sealed by")));
  sealing->addWidget(m_sealer, 1);
  sealing->addSpacing(touchGap(*this));
  sealing->addWidget(labelFor(*m_pin, tr("PIN")));
  sealing->addWidget(m_pin, 1);
  column->addLayout(sealing);
  all->addLayout(column, 1);
  m_foot = new BenchFoot({{tr("Back to the jobs"), QStringLiteral("backButton")}},
                         {tr("Seal the record"), QStringLiteral("sealButton")});
  all->addWidget(m_foot);
  passFocusOn(*this, *m_foot->main());
  connect(m_foot->way(0), &QPushButton::clicked, this, &FinishedPanel::left);
  connect(m_foot->main(), &QPushButton::clicked, this, &FinishedPanel::seal);
  connect(m_pin, &QLineEdit::returnPressed, this, &FinishedPanel::seal);
}

void FinishedPanel::present(const Id& jobId) {
  m_job = jobId;
  m_foot->say({});
  m_pin->clear();
  const auto job = m_workspace.shop().ledger().refresh(jobId);
  const auto floor = m_workspace.shop().ledger().floor();
  if (!job || !floor) return m_foot->say(worded(job ? floor.error() : job.error()));
  const Wording wording = [](const Message& message) { return fromQt(worded(message)); };
  // At arm's length the summary is read; the whole record is in Records.
  Document record =
      recordDocument(contentOf(**job, *floor, m_workspace.shop().identity().name, wording), wording);
  record.sections.resize(std::min(record.sections.size(), kSummarySections));
  // What was not as the sheet says stands first: facts of the job are known here.
  if (record.sections.size() > 1) std::swap(record.sections[0], record.sections[1]);
  m_document->present(std::move(record));
  m_document->setAccessibleName(tr("What the record says"));
  fillWorkers(*m_sealer, m_workspace.shop(), true);
  m_sealer->setCurrentIndex(std::max(0, m_sealer->findData(toQt((*job)->last()->enteredBy))));
  m_pin->setFocus();
}

void FinishedPanel::seal() {
  const auto sealed = m_workspace.seal(m_job, {m_sealer->currentData().toString(), m_pin->text(), {}});
  m_pin->clear();
  if (!sealed) return m_foot->say(worded(sealed.error()));
  emit recordWanted(m_job);
}

}  // namespace cw
