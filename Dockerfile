# The tags name exact releases. To hold their bytes too, put the digest behind them: node:…@sha256:…

FROM node:24.21.0-bookworm-slim AS build
WORKDIR /app
COPY package.json package-lock.json ./
# The packages' own scripts are not run: none is needed, and any could be changed by its publisher.
RUN npm ci --ignore-scripts --no-audit --no-fund
COPY tsconfig.json tsconfig.build.json ./
COPY src ./src
RUN npm run build && npm prune --omit=dev --ignore-scripts --no-audit --no-fund

FROM node:24.21.0-bookworm-slim
LABEL org.opencontainers.image.title="Platestemma" \
      org.opencontainers.image.description="A bibliographic graph database of illustrated publications" \
      org.opencontainers.image.version="0.1.0" \
      org.opencontainers.image.licenses="MIT"
# A store in a file lies here; a named volume takes over the folder with its owner.
RUN install -d -o 1000 -g 1000 -m 0700 /data
ENV NODE_ENV=production \
    PLATESTEMMA_STORE=/data/graph.store
WORKDIR /app
COPY package.json LICENSE LICENSE-NOTES.md ./
COPY schema ./schema
COPY demo-graph ./demo-graph
COPY --from=build /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
# The image's user `node`, by number, so that a host can tell that it is not root.
USER 1000:1000
EXPOSE 4000
STOPSIGNAL SIGTERM
HEALTHCHECK --interval=30s --timeout=5s --start-period=30s --retries=3 \
  CMD ["node", "-e", "fetch('http://127.0.0.1:4000/health').then(({ ok }) => process.exit(ok ? 0 : 1), () => process.exit(1))"]
ENTRYPOINT ["node", "/app/dist/main.js"]
# All addresses of the container; who of the outside reaches it is said where its port is published.
CMD ["serve", "--host", "0.0.0.0", "--port", "4000"]
