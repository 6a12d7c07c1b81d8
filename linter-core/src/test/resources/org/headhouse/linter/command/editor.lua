-- Opens a site, types a fault, waits until it is shown, lets the server fix it, and saves.
local seen = io.open('seen.txt', 'w')
local function see(line)
  seen:write(line .. '\n')
  seen:flush()
end
local function fail(why)
  see('failed: ' .. why)
  vim.cmd('cquit 1')
end
local buffer = vim.api.nvim_get_current_buf()
local shown = 0
local id = vim.lsp.start_client({
  name = 'linter',
  cmd = load('return ' .. os.getenv('LINTER_COMMAND'))(),
  root_dir = vim.fn.getcwd(),
  handlers = {
    ['textDocument/publishDiagnostics'] = function(err, result, context, config)
      vim.lsp.diagnostic.on_publish_diagnostics(err, result, context, config)
      if result.uri == vim.uri_from_bufnr(buffer) then
        shown = shown + 1
      end
    end,
  },
})
vim.lsp.buf_attach_client(buffer, id)
local function wait(number)
  if not vim.wait(60000, function() return #vim.diagnostic.get(buffer) == number and shown > 0 end, 20) then
    fail('shown ' .. #vim.diagnostic.get(buffer) .. ' and not ' .. number)
  end
end
wait(0)
see('opened: ' .. #vim.diagnostic.get(buffer))
vim.api.nvim_buf_set_lines(buffer, 2, 3, false, { 'stage: planed' })
wait(1)
local one = vim.diagnostic.get(buffer)[1]
see(string.format('typed: %s %d:%d-%d:%d severity %d', one.user_data.lsp.code,
  one.lnum + 1, one.col + 1, one.end_lnum + 1, one.end_col + 1, one.severity))
local params = vim.lsp.util.make_given_range_params({ 3, 8 }, { 3, 8 }, buffer, 'utf-16')
params.context = { diagnostics = {}, only = { 'quickfix' } }
local answers = vim.lsp.buf_request_sync(buffer, 'textDocument/codeAction', params, 60000)
local action = answers[id].result[1]
vim.lsp.util.apply_workspace_edit(action.edit, 'utf-16')
see('fixed: ' .. vim.api.nvim_buf_get_lines(buffer, 2, 3, false)[1])
wait(0)
see('after the fix: ' .. #vim.diagnostic.get(buffer))
vim.cmd('write')
vim.lsp.stop_client(id)
vim.cmd('qall')
