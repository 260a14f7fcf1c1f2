package stirtide.planner.http;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Optional;
import javax.net.ssl.SSLSession;

/** The head of an answer whose body was not waited for. */
record HeadOnly(HttpResponse<?> whole) implements HttpResponse<String> {
    @Override
    public int statusCode() {
        return whole.statusCode();
    }

    @Override
    public HttpRequest request() {
        return whole.request();
    }

    @Override
    public Optional<HttpResponse<String>> previousResponse() {
        return Optional.empty();
    }

    @Override
    public HttpHeaders headers() {
        return whole.headers();
    }

    @Override
    public String body() {
        return "";
    }

    @Override
    public Optional<SSLSession> sslSession() {
        return Optional.empty();
    }

    @Override
    public URI uri() {
        return whole.uri();
    }

    @Override
    public HttpClient.Version version() {
        return whole.version();
    }
}
