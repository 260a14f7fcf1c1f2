package stirtide.planner.eventlog;

class MemoryEventLogTest extends EventLogContract {
    @Override
    EventLog open() {
        return new MemoryEventLog();
    }
}
