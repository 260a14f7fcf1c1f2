"""A way to the service that can be cut in every place, and that remembers which commands went through it."""
import http.client, json, random, socket, threading, time

PASSED_ON = ("Accept", "Authorization", "Content-Type", "Last-Event-ID")


class Gate:
    """Forwards HTTP from a port of its own to the service's. What it does to requests is its mood:

    open    everything goes through
    shut    nobody gets in, and who is in is thrown out
    lose    a command is lost on its way to the service
    swallow a command reaches the service, its answer is lost
    stall   everything waits until the mood changes
    """

    def __init__(self, service_port):
        self.service_port = service_port
        self.mood = "open"
        self.until = 0
        self.commands = {}
        self.changed_bodies = []
        self.lock = threading.Lock()
        self.connections = set()
        self.listener = socket.create_server(("127.0.0.1", 0))
        self.port = self.listener.getsockname()[1]
        threading.Thread(target=self.listen, daemon=True).start()

    def set(self, mood, seconds=0):
        """A mood for some seconds, 0 for good; whoever holds the gate looks at until."""
        self.mood = mood
        self.until = time.monotonic() + seconds if seconds else 0
        if mood == "shut":
            self.throw_out()

    def throw_out(self):
        with self.lock:
            inside = list(self.connections)
        for connection in inside:
            try:
                connection.shutdown(socket.SHUT_RDWR)
            except OSError:
                pass

    def listen(self):
        while True:
            connection, _ = self.listener.accept()
            if self.mood == "shut":
                connection.close()
                continue
            threading.Thread(target=self.serve, args=(connection,), daemon=True).start()

    def serve(self, connection):
        with self.lock:
            self.connections.add(connection)
        try:
            with connection, connection.makefile("rb") as reader:
                while self.one(connection, reader):
                    pass
        except (OSError, http.client.HTTPException, ValueError):
            pass
        finally:
            with self.lock:
                self.connections.discard(connection)

    def one(self, connection, reader):
        head = reader.readline().decode("latin-1").split()
        if len(head) < 2:
            return False
        headers = http.client.parse_headers(reader)
        body = reader.read(int(headers.get("Content-Length") or 0))
        command = head[0] == "POST" and head[1].endswith("/commands")
        entry = self.remember(body) if command else None
        while self.mood == "stall":
            threading.Event().wait(0.05)
        if self.mood == "shut" or command and self.mood == "lose":
            return False
        upstream = http.client.HTTPConnection("127.0.0.1", self.service_port, timeout=None if "/live" in head[1] else 15)
        try:
            wanted = {name: value for name, value in headers.items() if name in PASSED_ON}
            upstream.request(head[0], head[1], body or None, wanted)
            answer = upstream.getresponse()
            if (answer.headers.get("Content-Type") or "").startswith("text/event-stream"):
                return self.stream(connection, answer)
            content = answer.read()
            if entry is not None:
                entry["answers"].append((answer.status, content.decode()))
                if self.mood == "swallow":
                    return False
            wait = answer.headers.get("Retry-After")
            connection.sendall(f"HTTP/1.1 {answer.status} x\r\nContent-Type: application/json\r\n"
                               f"{f'Retry-After: {wait}' + chr(13) + chr(10) if wait else ''}"
                               f"Content-Length: {len(content)}\r\n\r\n".encode() + content)
            return True
        finally:
            upstream.close()

    def stream(self, connection, answer):
        connection.sendall(b"HTTP/1.1 200 x\r\nContent-Type: text/event-stream\r\nConnection: close\r\n\r\n")
        while True:
            piece = answer.read1(65536)
            while self.mood == "stall":
                threading.Event().wait(0.05)
            if not piece or self.mood == "shut":
                return False
            connection.sendall(piece)

    def remember(self, body):
        request = json.loads(body)
        with self.lock:
            entry = self.commands.setdefault(request["commandId"], {"request": request, "answers": [], "times": 0})
            entry["times"] += 1
            if entry["request"] != request:
                self.changed_bodies.append(request)
        return entry


def mood_for(chance: random.Random):
    return chance.choice(("shut", "shut", "lose", "swallow", "swallow", "stall"))
