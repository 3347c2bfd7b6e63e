// The page Service at a desk: shown, on one of its tabs, and settled.
#pragma once

#include "app/models/panel_list.h"
#include "app/models/plain_rows.h"
#include "app/pages/service/service_page.h"

#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTabWidget>
#include <QTableView>
#include <QTest>

namespace support {

enum class ServiceTab { Due, Machines, Wear, Packs };

struct ServiceDesk {
    explicit ServiceDesk(laneward::Session& of, ServiceTab tab, const QSize& size = {1'100, 640}) : session(of), page(of) {
        page.resize(size);
        page.show();
        [this] { QVERIFY(QTest::qWaitForWindowExposed(&page)); }();
        tabs = page.findChild<QTabWidget*>();
        show(tab);
    }

    void show(ServiceTab tab) {
        tabs->setCurrentIndex(int(tab));
        wait();
    }
    void wait() {
        [this] { QTRY_VERIFY_WITH_TIMEOUT(!page.isBusy(), 60'000); }();
    }
    template <class T>
    T* part(const char* name) {
        return page.findChild<T*>(name);
    }
    /// What a list of plain rows holds, however it is sorted.
    laneward::PlainRows& rows(const char* list) {
        return *static_cast<laneward::PlainRows*>(
            static_cast<QSortFilterProxyModel*>(part<QTableView>(list)->model())->sourceModel());
    }
    void choose(const char* list, const QString& id) { laneward::chooseRow(*part<QTableView>(list), rows(list).rowOf(id)); }
    void click(const char* button) { QTest::mouseClick(part<QPushButton>(button), Qt::LeftButton); }

    laneward::Session& session;
    laneward::ServicePage page;
    QTabWidget* tabs = nullptr;
};

}  // namespace support
