#include "app/pages/supplies/order_deeds.h"

#include "app/pages/supplies/list_paper.h"
#include "app/paper/order_painter.h"
#include "core/season/orders.h"

#include <QCoreApplication>
#include <QFileDialog>
#include <QPrinter>
#include <QSaveFile>

namespace laneward {

namespace {

QString say(const char* source) { return QCoreApplication::translate("laneward::OrderDeeds", source); }

QString askWhere(const Order& order, const char* filter, const QString& ending, QWidget* over) {
    const QString name =
        say(QT_TRANSLATE_NOOP("laneward::OrderDeeds", "order-%1.%2")).arg(shown(order.number).replace(u'/', u'-'), ending);
    return QFileDialog::getSaveFileName(over, say(QT_TRANSLATE_NOOP("laneward::OrderDeeds", "Save the order")), name,
                                        say(filter));
}

void sayWhere(const QString& path, Session& session) {
    Q_EMIT session.said(say(QT_TRANSLATE_NOOP("laneward::OrderDeeds", "The order is in %1")).arg(path));
}

}  // namespace

Order newOrder(const PlannedOrder& planned, OrderState state, const Session& session) {
    Order order = draftOf(planned, session.season(), session.today());
    order.id = {session.newOperation().value};
    if (state == OrderState::Placed) place(order, session);
    return order;
}

void place(Order& order, const Session& session) {
    order.state = OrderState::Placed;
    order.placedOn = session.today();
    if (const std::optional<Person> person = session.person()) order.person = person->id;
}

void printOrder(const Order& order, Session& session, QWidget* over) {
    QPrinter printer(QPrinter::HighResolution);
    if (!askPrinter(printer, session, over)) return;
    if (paintOrders(printer, {purchaseOrder(session.season(), order)}, session.speech()) > 0)
        Q_EMIT session.said(say(QT_TRANSLATE_NOOP("laneward::OrderDeeds", "Order %1 is printed")).arg(shown(order.number)));
    else
        Q_EMIT session.problem(
            say(QT_TRANSLATE_NOOP("laneward::OrderDeeds", "Nothing was printed: the printer cannot be painted on.")));
}

void askWhereForPdf(const Order& order, Session& session, QWidget* over) {
    const QString path = askWhere(order, QT_TRANSLATE_NOOP("laneward::OrderDeeds", "PDF (*.pdf)"), QStringLiteral("pdf"), over);
    if (!path.isEmpty()) saveOrderPdf(path, order, session);
}

void askWhereForCsv(const Order& order, Session& session, QWidget* over) {
    const QString path = askWhere(order, QT_TRANSLATE_NOOP("laneward::OrderDeeds", "CSV (*.csv)"), QStringLiteral("csv"), over);
    if (!path.isEmpty()) saveOrderCsv(path, order, session);
}

bool saveOrderPdf(const QString& path, const Order& order, Session& session) {
    const bool letter = session.season().centre.facts.settings.letterPaper;
    const Outcome written = writeOrdersPdf(path, {purchaseOrder(session.season(), order)}, session.speech(),
                                           letter ? PaperSize::Letter : PaperSize::A4);
    if (written)
        sayWhere(path, session);
    else
        Q_EMIT session.problem(text(written.error(), session.speech()));
    return bool(written);
}

bool saveOrderCsv(const QString& path, const Order& order, Session& session) {
    const QByteArray csv = orderCsv(purchaseOrder(session.season(), order));
    QSaveFile file(path);
    const bool saved = file.open(QIODevice::WriteOnly) && file.write(csv) == csv.size() && file.commit();
    if (saved)
        sayWhere(path, session);
    else
        Q_EMIT session.problem(
            say(QT_TRANSLATE_NOOP("laneward::OrderDeeds", "%1 could not be written; nothing was changed.")).arg(path));
    return saved;
}

}  // namespace laneward
