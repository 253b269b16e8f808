#include "app/bench/finished_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/common/document_view.h"
#include "app/common/measures.h"
#include "app/common/style.h"
#include "app/common/wording.h"
#include "core/report/record_document.h"

namespace cw {

FinishedPanel::FinishedPanel(Workspace& workspace, QWidget* parent)
    : QWidget(parent), m_workspace(workspace) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(24, 24, 24, 16);
  column->setSpacing(8);
  m_title = new QLabel;
  m_title->setFont(fontOfHeight(bench::kTextHeight * 1.2, this, QFont::Bold));
  m_document = new DocumentView;
  m_document->setObjectName(QStringLiteral("finishedText"));
  m_document->setAccessibleName(tr("What the record says"));
  m_said = new QLabel;
  m_said->setObjectName(QStringLiteral("saidText"));
  m_said->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_said->setForegroundRole(QPalette::BrightText);
  m_said->setWordWrap(true);
  column->addWidget(m_title);
  column->addWidget(m_document, 1);
  column->addWidget(m_said);
  auto* foot = new QHBoxLayout;
  auto* back = new QPushButton(tr("Back to the jobs"));
  back->setObjectName(QStringLiteral("backButton"));
  m_seal = new QPushButton(tr("Seal the record"));
  m_seal->setObjectName(QStringLiteral("sealButton"));
  m_seal->setProperty(kMainProperty, true);
  back->setFont(fontOfHeight(bench::kLabelHeight, this));
  back->setMinimumHeight(static_cast<int>(pixels(bench::kTarget, this)));
  m_seal->setFont(fontOfHeight(bench::kTextHeight, this, QFont::Bold));
  m_seal->setMinimumSize(static_cast<int>(pixels(bench::kMainTargetWidth, this)),
                         static_cast<int>(pixels(bench::kMainTargetHeight, this)));
  foot->addWidget(back);
  foot->addStretch(1);
  foot->addWidget(m_seal);
  column->addLayout(foot);
  connect(back, &QPushButton::clicked, this, &FinishedPanel::left);
  connect(m_seal, &QPushButton::clicked, this, &FinishedPanel::seal);
}

void FinishedPanel::present(const Id& jobId) {
  m_job = jobId;
  m_said->clear();
  const auto job = m_workspace.shop().ledger().refresh(jobId);
  const auto floor = m_workspace.shop().ledger().floor();
  if (!job || !floor) return m_said->setText(worded(job ? floor.error() : job.error()));
  m_title->setText(tr("Finished: %1, %2").arg(toQt((*job)->start.workOrder), toQt((*job)->start.machine)));
  const Wording wording = [](const Message& message) { return fromQt(worded(message)); };
  m_document->present(
      recordDocument(contentOf(**job, *floor, m_workspace.shop().identity().name, wording), wording));
  m_seal->setFocus();
}

void FinishedPanel::seal() {
  if (const auto sealed = m_workspace.seal(m_job); !sealed) return m_said->setText(worded(sealed.error()));
  emit recordWanted(m_job);
}

}  // namespace cw
