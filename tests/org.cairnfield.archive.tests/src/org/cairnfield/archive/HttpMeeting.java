package org.cairnfield.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.zip.GZIPInputStream;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.transport.PacketLineOut;
import org.eclipse.jgit.transport.ReceivePack;
import org.eclipse.jgit.transport.RefAdvertiser.PacketLineOutRefAdvertiser;
import org.eclipse.jgit.transport.UploadPack;

/** A bare repository behind a web server on this machine, for those who know the password. It speaks Git's HTTP protocol. */
final class HttpMeeting implements AutoCloseable {

	private final Path bare;
	private final String authorization;
	private final HttpServer server;
	private final ExecutorService threads = Executors.newCachedThreadPool();

	HttpMeeting(Path bare, String user, String password) throws IOException {
		this.bare = bare;
		authorization = "Basic "
				+ Base64.getEncoder().encodeToString((user + ':' + password).getBytes(StandardCharsets.UTF_8));
		server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
		server.setExecutor(threads);
		server.createContext("/quay.git/", this::answer);
		server.start();
	}

	String url() {
		return "http://" + server.getAddress().getAddress().getHostAddress() + ':' + server.getAddress().getPort()
				+ "/quay.git";
	}

	private void answer(HttpExchange exchange) throws IOException {
		try (exchange; Repository repository = new FileRepositoryBuilder().setGitDir(bare.toFile()).build()) {
			if (!authorization.equals(exchange.getRequestHeaders().getFirst("Authorization"))) {
				exchange.getResponseHeaders().set("WWW-Authenticate", "Basic realm=\"quay\"");
				exchange.sendResponseHeaders(401, -1);
				return;
			}
			String path = exchange.getRequestURI().getPath();
			if (path.endsWith("/info/refs")) {
				advertise(exchange, exchange.getRequestURI().getQuery().replace("service=", ""), repository);
			} else {
				serve(exchange, path.substring(path.lastIndexOf('/') + 1), repository);
			}
		}
	}

	private static void advertise(HttpExchange exchange, String service, Repository repository) throws IOException {
		exchange.getResponseHeaders().set("Content-Type", "application/x-" + service + "-advertisement");
		exchange.sendResponseHeaders(200, 0);
		PacketLineOut out = new PacketLineOut(exchange.getResponseBody());
		out.writeString("# service=" + service + '\n');
		out.end();
		if (service.equals("git-upload-pack")) {
			try (UploadPack pack = new UploadPack(repository)) {
				pack.setBiDirectionalPipe(false);
				pack.sendAdvertisedRefs(new PacketLineOutRefAdvertiser(out));
			}
		} else {
			ReceivePack pack = new ReceivePack(repository);
			pack.setBiDirectionalPipe(false);
			pack.sendAdvertisedRefs(new PacketLineOutRefAdvertiser(out));
		}
	}

	private static void serve(HttpExchange exchange, String service, Repository repository) throws IOException {
		boolean zipped = "gzip".equals(exchange.getRequestHeaders().getFirst("Content-Encoding"));
		exchange.getResponseHeaders().set("Content-Type", "application/x-" + service + "-result");
		exchange.sendResponseHeaders(200, 0);
		try (InputStream in = zipped ? new GZIPInputStream(exchange.getRequestBody()) : exchange.getRequestBody();
				OutputStream out = exchange.getResponseBody()) {
			if (service.equals("git-upload-pack")) {
				try (UploadPack pack = new UploadPack(repository)) {
					pack.setBiDirectionalPipe(false);
					pack.upload(in, out, null);
				}
			} else {
				ReceivePack pack = new ReceivePack(repository);
				pack.setBiDirectionalPipe(false);
				pack.receive(in, out, null);
			}
		}
	}

	@Override
	public void close() {
		server.stop(0);
		threads.shutdownNow();
	}
}
