// What load.sh compares processor time with: a handler as in tutorials that reads the request and writes
// an object of the same size. Arguments: the port, and a file with the answer.
const { readFileSync } = require('node:fs')
const server = require('fastify')()
const [port, file] = process.argv.slice(2)
const answer = JSON.parse(readFileSync(file, 'utf8'))

server.post('/v1/sound-level', async (request) => {
  if (request.body.driver.rated_ohm <= 0) throw new Error('read, and used')
  return answer
})
server.get('/health/ready', async () => 'up')
server.listen({ host: '127.0.0.1', port: Number(port) })
