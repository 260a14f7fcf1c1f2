package stirtide.planner.log;

class MemoryEventLogTest extends EventLogContract {
    @Override
    EventLog open() {
        return new MemoryEventLog();
    }
}
