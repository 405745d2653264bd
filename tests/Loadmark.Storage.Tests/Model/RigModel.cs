namespace Loadmark.Storage.Tests.Model;

/// <summary>What the store must do, without a database: every state that can be seen again, and which of them is the present one.</summary>
internal sealed class RigModel(string name, string text, int editsKept)
{
    private readonly List<(string Name, string Text, string? What)> _states = [(name, text, null)];
    private int _present;

    public long Revision { get; private set; } = 1;

    public bool IsRemoved { get; private set; }

    public string Name => _states[_present].Name;

    public string Text => _states[_present].Text;

    public string? UndoWhat => _present > 0 ? _states[_present].What : null;

    public string? RedoWhat => _present + 1 < _states.Count ? _states[_present + 1].What : null;

    public void Save(string newName, string newText, string what)
    {
        if (newName == Name && newText == Text)
            return;
        _states.RemoveRange(_present + 1, _states.Count - _present - 1);
        _states.Add((newName, newText, what));
        if (_states.Count > editsKept + 1)
            _states.RemoveAt(0);
        _present = _states.Count - 1;
        Revision++;
    }

    public void Undo() => MoveTo(_present - 1);

    public void Redo() => MoveTo(_present + 1);

    public void Remove() => (IsRemoved, Revision) = (true, Revision + 1);

    public void Restore() => (IsRemoved, Revision) = (false, IsRemoved ? Revision + 1 : Revision);

    private void MoveTo(int state)
    {
        if (state < 0 || state >= _states.Count)
            return;
        _present = state;
        Revision++;
    }
}
