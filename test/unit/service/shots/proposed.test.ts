import { describe, expect, it } from 'vitest';
import { proposedClub, proposedMapping } from '../../../../src-main/service/shots/proposed.ts';
import { shotTable } from '../../../../src-main/service/shots/table.ts';
import { bagFile, withClub } from '../../../support/bags.ts';

describe('the columns that a header suggests', () => {
  it.each([
    [
      'club,shot,ball_speed_mph,launch_deg,spin_rpm,apex_yd,carry_yd,total_yd',
      {
        columns: { club: 0, ballSpeed: 2, launch: 3, spin: 4, carry: 6, total: 7 },
        distance: 'yd',
        speed: 'mph',
      },
    ],
    [
      'Club,Carry (m),Carry side (m),Ball speed [km/h],Launch angle,Spin rate',
      { columns: { club: 0, carry: 1, ballSpeed: 3, launch: 4, spin: 5 }, distance: 'm', speed: 'km/h' },
    ],
    [
      'Schläger,Flugweite,Ballgeschwindigkeit m/s',
      { columns: { club: 0, carry: 1, ballSpeed: 2 }, speed: 'm/s' },
    ],
    ['a,b', { columns: {}, distance: null, speed: null }],
    ['Carry,Carry', { columns: { carry: 0 } }],
    ['Club Name,Carry Dist,Total Dist,Ball Spd', { columns: { club: 0, carry: 1, total: 2, ballSpeed: 3 } }],
    [
      'club,carry distance (yd),total dist. [yd],Launch Ang.',
      { columns: { club: 0, carry: 1, total: 2, launch: 3 }, distance: 'yd' },
    ],
    ['ClubName,CarryDistance,BallSpeed', { columns: { club: 0, carry: 1, ballSpeed: 2 } }],
    ['Distance (carry),Distance (total)', { columns: { carry: 0, total: 1 } }],
    ['Distance carry m', { columns: { carry: 0 }, distance: 'm' }],
    ['Schläger,Carry-Länge,Gesamtlänge', { columns: { club: 0, carry: 1, total: 2 } }],
    // A distance alone may be either.
    ['Distance,Dist', { columns: {} }],
    // Neither is a carry, nor a total.
    ['Carry deviation,Carry dispersion,Carry dist. to pin,Total shots', { columns: {} }],
    ['Club speed,Clubhead', { columns: {} }],
  ])('%s', (header, wanted) => {
    expect(proposedMapping(header.split(','), [])).toMatchObject(wanted);
    expect(proposedMapping(header.split(','), []).columns).toEqual(wanted.columns);
  });
  it.each([
    [['150.5'], '.'],
    [['150,5', '140'], ','],
    [['150'], '.'],
    // One that has both marks is asked of the user with the point first.
    [['150,5', '150.5'], '.'],
    [['1,234,5'], '.'],
  ] as const)('the decimal mark of %j is %s', (carries, mark) => {
    const sample = carries.map((carry) => ['7i', carry]);
    expect(proposedMapping(['club', 'carry'], sample).decimal).toBe(mark);
  });
});

describe('the club that a word suggests', () => {
  const { clubs } = bagFile();
  it.each([
    ['driver', 'driver'],
    ['D', 'driver'],
    ['7 Iron', '7i'],
    ['7-iron', '7i'],
    ['i7', '7i'],
    ['Pitching Wedge', 'pw'],
    ['gap wedge', 'gw'],
    ['5W', '5w'],
    ['4 Hybrid', '4h'],
    ['3 wood', null],
    ['4 iron', null],
    ['60', null],
    ['', null],
  ])('%s → %s', (word, id) => {
    expect(proposedClub(word, clubs)).toBe(id);
  });
  it('takes the name that the bag gives it before the trade’s, and none where two bear it', () => {
    const named = withClub(bagFile(), '6i', { label: 'Old faithful' }).clubs;
    expect(proposedClub('OLD FAITHFUL', named)).toBe('6i');
    const twice = withClub(bagFile(), '6i', { label: '7 iron' }).clubs;
    expect(proposedClub('seven', twice)).toBeNull();
    expect(proposedClub('7 Iron', twice)).toBe('6i');
    expect(proposedClub('7i', twice)).toBe('7i');
  });
});

describe('the header row', () => {
  it('is the first with two names, or the one that is asked for; rows keep their numbers', () => {
    const text = 'Range session\n\nClub;Carry\n;yd\n7i;150\n';
    expect(shotTable(text)).toEqual({
      header: ['Club', 'Carry'],
      headerRow: 3,
      rows: [['', 'yd'], ['7i', '150'], ['']],
    });
    expect(shotTable(text, 5)).toMatchObject({ header: ['7i', '150'], rows: [['']] });
    expect(() => shotTable(text, 2)).toThrow(/row 2: there is no header\. Choose another row/);
    expect(() => shotTable(text, 9)).toThrow(/row 9: there is no header/);
    expect(shotTable('Club\n7i').headerRow).toBe(1);
  });
});
